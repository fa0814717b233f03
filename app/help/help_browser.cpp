#include "app/help/help_browser.h"

#include "app/help/help_formulas.h"
#include "app/help/help_pages.h"

#include <QDesktopServices>
#include <QEvent>
#include <QFontInfo>
#include <QPainter>
#include <QRegularExpression>

namespace blinkwright::app::help {

namespace {

constexpr int margin = 18;
constexpr double formulaSize = 1.25; ///< over the text's

/// Formulas speak for themselves to those who cannot see them.
QString withFormulaWords(QString html) {
    static const QRegularExpression tag(QStringLiteral("<img src=\"formula:([a-z0-9-]+)\""));
    qsizetype from = 0;
    for (QRegularExpressionMatch found = tag.match(html); found.hasMatch(); found = tag.match(html, from)) {
        const auto formula = formulaNamed(found.captured(1));
        const QString words =
            QStringLiteral(" alt=\"%1\"").arg(formula ? plainText(*formula).toHtmlEscaped() : QString());
        html.insert(found.capturedEnd(), words);
        from = found.capturedEnd() + words.size();
    }
    return html;
}

/// A line that is a picture has no air of lines of text: it would be a share of the picture's height.
QString withPictureLines(QString html) {
    return html.replace(QStringLiteral("<p><img "), QStringLiteral("<p class=\"picture\"><img "));
}

/// Pictures of the light window, as prints lying on a dark page.
QImage onCard(const QImage& picture, const widgets::Theme& theme) {
    if (picture.isNull()) return picture;
    constexpr int edge = 8, corner = 6;
    QImage card(picture.size() + QSize(2 * edge, 2 * edge), QImage::Format_ARGB32_Premultiplied);
    card.fill(Qt::transparent);
    QPainter painter(&card);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(theme.frame);
    painter.setBrush(widgets::Theme::of(widgets::Theme::Mode::light).window);
    painter.drawRoundedRect(QRectF(card.rect()).adjusted(0.5, 0.5, -0.5, -0.5), corner, corner);
    painter.drawImage(edge, edge, picture);
    return card;
}

QString styleOf(const widgets::Theme& theme) {
    return QStringLiteral("h1 { font-size: x-large; margin-bottom: 6px; }"
                          "h2 { font-size: large; margin-top: 14px; margin-bottom: 4px; }"
                          "p, li { line-height: 128%; margin-bottom: 6px; }"
                          "p.picture { line-height: 100%; }"
                          "a { color: %1; }"
                          "td, th { padding: 3px 14px 3px 0; text-align: left; }"
                          ".quiet { color: %2; }")
        .arg(theme.accent.name(), theme.quietInk.name());
}

} // namespace

HelpBrowser::HelpBrowser(std::function<QString()> keys, QWidget* parent)
    : QTextBrowser(parent), m_keys(std::move(keys)),
      m_theme(&widgets::Theme::of(widgets::Theme::Mode::light)) {
    setOpenLinks(false); // of the desktop they would be, by their scheme
    document()->setDocumentMargin(margin);
    setFrameShape(QFrame::NoFrame);
    connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
        if (link.scheme() == QLatin1String("help"))
            setSource(link);
        else
            QDesktopServices::openUrl(link);
    });
}

void HelpBrowser::setTheme(const widgets::Theme& theme) {
    m_theme = &theme;
    QPalette palette = this->palette();
    palette.setColor(QPalette::Base, theme.paper);
    palette.setColor(QPalette::Text, theme.ink);
    setPalette(palette);
    document()->setDefaultStyleSheet(styleOf(theme));
    if (!source().isEmpty()) reload(); // what is drawn has the colours of before
}

void HelpBrowser::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::FontChange && !source().isEmpty())
        reload(); // formulas are as large as the text
}

QString HelpBrowser::page() const {
    return source().path();
}

QString HelpBrowser::html(const QString& page) const {
    QString text = withPictureLines(withFormulaWords(pageText(page)));
    const QString mark = QStringLiteral("<!-- keys -->");
    if (text.contains(mark)) text.replace(mark, m_keys());
    return text;
}

QVariant HelpBrowser::loadResource(int type, const QUrl& name) {
    const QString path = name.path();
    if (name.scheme() == QLatin1String("help")) return html(path);
    if (name.scheme() == QLatin1String("formula")) {
        const auto formula = formulaNamed(path);
        if (!formula) return {};
        QFont larger = font();
        larger.setPixelSize(qRound(QFontInfo(font()).pixelSize() * formulaSize));
        return formulaImage(*formula, larger, m_theme->ink, devicePixelRatioF());
    }
    if (name.scheme() == QLatin1String("picture"))
        return onCard(QImage(QStringLiteral(":/help/pictures/%1.png").arg(path)), *m_theme);
    return QTextBrowser::loadResource(type, name);
}

} // namespace blinkwright::app::help
