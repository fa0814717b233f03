#include "widgets/findings/finding_row.h"

#include "widgets/text/text_sized.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

namespace blinkwright::widgets {

namespace {
constexpr int symbolSize = 16; // for texts of the usual size
constexpr int symbolLeft = 10, afterSymbol = 10;
constexpr int topMargin = 7;

QString text(const std::string& s) {
    return QString::fromStdString(s);
}

int textLeft(const QWidget& row) {
    return symbolLeft + withText(row, symbolSize) + afterSymbol;
}

SteadyLabel* wrapped() {
    auto* text = new SteadyLabel;
    text->label()->setWordWrap(true);
    text->label()->setTextFormat(Qt::PlainText);
    text->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    return text;
}
} // namespace

QString severityWord(study::Severity severity) {
    switch (severity) {
    case study::Severity::fault:
        return FindingRow::tr("Fault");
    case study::Severity::overstress:
        return FindingRow::tr("Overstress");
    case study::Severity::doubt:
        return FindingRow::tr("Doubt");
    case study::Severity::caution:
        return FindingRow::tr("Caution");
    case study::Severity::note:
        return FindingRow::tr("Note");
    }
    return {};
}

QColor severityColour(const Theme& theme, study::Severity severity) {
    switch (severity) {
    case study::Severity::fault:
        return theme.fault;
    case study::Severity::overstress:
        return theme.overstress;
    case study::Severity::doubt:
        return theme.doubt;
    case study::Severity::caution:
        return theme.caution;
    case study::Severity::note:
        return theme.note;
    }
    return theme.ink;
}

void paintSeverity(QPainter& painter, const QRectF& box, study::Severity severity, const Theme& theme) {
    const QColor colour = severityColour(theme, severity);
    const QPointF c = box.center();
    const double r = box.width() / 2 - 1;
    const QPen mark(theme.paper, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const auto dot = [&](QPointF at) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(mark.color());
        painter.drawEllipse(at, 1.2, 1.2);
    };
    switch (severity) {
    case study::Severity::fault: { // a square with a cross
        painter.drawRoundedRect(QRectF(c.x() - r, c.y() - r, 2 * r, 2 * r), 2, 2);
        painter.setPen(mark);
        painter.drawLine(c + QPointF(-r / 2, -r / 2), c + QPointF(r / 2, r / 2));
        painter.drawLine(c + QPointF(-r / 2, r / 2), c + QPointF(r / 2, -r / 2));
        break;
    }
    case study::Severity::overstress: { // a lozenge with an arrow that passes its limit
        painter.drawPolygon(QPolygonF{c + QPointF(0, -r - 1), c + QPointF(r + 1, 0), c + QPointF(0, r + 1),
                                      c + QPointF(-r - 1, 0)});
        painter.setPen(mark);
        painter.drawLine(c + QPointF(0, r / 2), c + QPointF(0, -r / 2));
        painter.drawPolyline(
            QPolygonF{c + QPointF(-r / 3, -r / 6), c + QPointF(0, -r / 2), c + QPointF(r / 3, -r / 6)});
        break;
    }
    case study::Severity::doubt: { // a disc with a question mark
        painter.drawEllipse(c, r, r);
        QFont font = painter.font();
        font.setPixelSize(static_cast<int>(1.5 * r));
        font.setBold(true);
        painter.setFont(font);
        painter.setPen(theme.paper);
        painter.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
        break;
    }
    case study::Severity::caution: { // a triangle with an exclamation stroke
        painter.drawPolygon(QPolygonF{c + QPointF(0, -r), c + QPointF(r + 1, r), c + QPointF(-r - 1, r)});
        painter.setPen(mark);
        painter.drawLine(c + QPointF(0, -r / 4), c + QPointF(0, r / 4));
        dot(c + QPointF(0, 0.68 * r));
        break;
    }
    case study::Severity::note: { // a ring with an i
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colour, 1.5));
        painter.drawEllipse(c, r, r);
        painter.setPen(QPen(colour, 2, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(c + QPointF(0, -r / 10), c + QPointF(0, r / 2));
        painter.drawPoint(c + QPointF(0, -r / 2));
        break;
    }
    }
    painter.restore();
}

FindingRow::FindingRow(QWidget* parent)
    : QFrame(parent), m_theme(Theme::of(Theme::Mode::light)), m_head(wrapped()), m_text(wrapped()),
      m_remedy(wrapped()), m_source(wrapped()) {
    setFocusPolicy(Qt::StrongFocus);
    setWhatsThis(tr("Something in the circuit that is wrong, doubtful or worth knowing, and what to do about "
                    "it. Return shows "
                    "the place on the Hook-up, the space bar the source of the rule."));
    m_head->label()->setTextFormat(Qt::RichText);
    m_head->label()->setTextInteractionFlags(Qt::LinksAccessibleByMouse); // by keyboard: Return on the row
    auto* column = new QVBoxLayout(this);
    sizedByText(*this,
                [this, column] { column->setContentsMargins(textLeft(*this), topMargin, 10, topMargin); });
    column->setSpacing(2);
    for (SteadyLabel* part : {m_head, m_text, m_remedy, m_source}) column->addWidget(part);
    m_source->hide();
    connect(m_head->label(), &QLabel::linkActivated, this, &FindingRow::placeActivated);
}

void FindingRow::setFinding(const study::Finding& finding, const QString& set) {
    m_finding = finding;
    m_set = set;
    fill();
}

void FindingRow::fill() {
    const QColor colour = severityColour(m_theme, m_finding.severity);
    const QString word = severityWord(m_finding.severity);
    QString head = QStringLiteral("<b><span style=\"color:%1\">%2</span></b>").arg(colour.name(), word);
    if (!m_set.isEmpty())
        head = QStringLiteral("<b><span style=\"color:%1\">%2</span></b>&nbsp;&nbsp;")
                   .arg(m_theme.setB.name(), m_set.toHtmlEscaped()) +
               head;
    QStringList places;
    for (const std::string& place : m_finding.places) {
        const QString safe = text(place).toHtmlEscaped();
        places << QStringLiteral("<a href=\"%1\" style=\"color:%2\">%1</a>").arg(safe, m_theme.accent.name());
    }
    if (!places.isEmpty()) head += QStringLiteral("&nbsp;&nbsp;") + places.join(QStringLiteral(", "));
    const auto put = [](SteadyLabel* label, const QString& words) {
        label->setText(words);
        const bool wanted = !words.isEmpty();
        if (label->isHidden() == wanted) label->setVisible(wanted);
    };
    put(m_head, head);
    put(m_text, text(m_finding.text));
    put(m_remedy, text(m_finding.remedy));
    const QString source =
        m_finding.source.empty() ? QString() : tr("Source: %1").arg(text(m_finding.source));
    put(m_source, m_expanded ? source : QString());
    setToolTip(source);
    const QString whose = m_set.isEmpty() ? word : tr("%1, %2").arg(m_set, word);
    setAccessibleName(QStringLiteral("%1: %2 %3").arg(whose, text(m_finding.text), text(m_finding.remedy)));
    QString description = source;
    if (!m_finding.places.empty())
        description +=
            (source.isEmpty() ? QString() : QStringLiteral(". ")) +
            tr("Return shows %1 on the Hook-up, space the source.").arg(text(m_finding.places.front()));
    setAccessibleDescription(description);
    update();
}

void FindingRow::setTheme(const Theme& theme) {
    m_theme = theme;
    QPalette p = theme.palette();
    p.setColor(QPalette::WindowText, theme.ink);
    m_head->label()->setPalette(p);
    m_text->label()->setPalette(p);
    p.setColor(QPalette::WindowText, theme.quietInk);
    m_remedy->label()->setPalette(p);
    m_source->label()->setPalette(p);
    fill();
}

void FindingRow::setExpanded(bool on) {
    m_expanded = on;
    fill();
}

void FindingRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const int side = withText(*this, symbolSize);
    const double top = topMargin + (m_head->height() - side) / 2.0;
    paintSeverity(painter, QRectF(symbolLeft, std::max<double>(topMargin, top), side, side),
                  m_finding.severity, m_theme);
    painter.setPen(m_theme.grid);
    painter.drawLine(textLeft(*this), height() - 1, width() - 10, height() - 1);
}

void FindingRow::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!m_finding.places.empty()) emit placeActivated(text(m_finding.places.front()));
        break;
    case Qt::Key_Space:
        setExpanded(!m_expanded);
        break;
    case Qt::Key_Down:
        focusNextChild();
        break;
    case Qt::Key_Up:
        focusPreviousChild();
        break;
    default:
        QFrame::keyPressEvent(event);
    }
}

void FindingRow::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && !m_finding.places.empty())
        emit placeActivated(text(m_finding.places.front()));
    QFrame::mousePressEvent(event);
}

} // namespace blinkwright::widgets
