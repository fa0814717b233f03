#include "app/help/help_window.h"

#include "app/help/help_browser.h"
#include "app/help/help_pages.h"
#include "app/icons.h"
#include "widgets/text/text_sized.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QShortcut>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

namespace blinkwright::app::help {

namespace {

constexpr QSize firstSize(980, 700); // the pictures need no scroll bar
constexpr int listWidth = 220, findWidth = 260;
const QString stateName = QStringLiteral("help");

QListWidgetItem* itemOf(const QListWidget& list, const QString& page) {
    for (int k = 0; k < list.count(); ++k)
        if (list.item(k)->data(Qt::UserRole).toString() == page) return list.item(k);
    return nullptr;
}

} // namespace

HelpWindow::HelpWindow(Settings& settings, const Appearance& appearance, std::function<QString()> keys,
                       QWidget* parent)
    : QDialog(parent, Qt::Window), m_settings(settings), m_browser(new HelpBrowser(std::move(keys))) {
    setObjectName(stateName);
    setWindowTitle(tr("Help"));
    m_browser->setAccessibleName(tr("Page of the help"));
    m_browser->setWhatsThis(
        tr("One page of the help. Tab goes from link to link and Enter follows one; texts can be chosen and "
           "copied."));
    makeBar();
    makeList();
    makeFind();
    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_browser, 1);
    column->addWidget(m_findBar);
    auto* parts = new QSplitter(Qt::Horizontal);
    parts->setChildrenCollapsible(false);
    parts->addWidget(m_list);
    parts->addWidget(right);
    parts->setStretchFactor(1, 1);
    parts->setSizes({listWidth, firstSize.width() - listWidth});
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(6, 6, 6, 6);
    whole->setSpacing(6);
    whole->addWidget(m_bar);
    whole->addWidget(parts, 1);

    // The browser's own source() is still that of before then.
    connect(m_browser, &QTextBrowser::sourceChanged, this, [this](const QUrl& now) { showPage(now.path()); });
    connect(&appearance, &Appearance::themeChanged, this, &HelpWindow::setTheme);
    setTheme(appearance.theme());
    if (!restoreGeometry(m_settings.windowState(stateName))) resize(widgets::withText(*this, firstSize));
}

HelpWindow::~HelpWindow() {
    keepSize();
}

void HelpWindow::makeBar() {
    m_bar = new QWidget;
    auto* row = new QHBoxLayout(m_bar);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& name, const QKeySequence& keys, const QString& meaning) {
        auto* button = new QToolButton;
        button->setWhatsThis(meaning);
        button->setText(name);
        button->setToolTip(tr("%1 (%2)").arg(name, keys.toString(QKeySequence::NativeText)));
        button->setShortcut(keys);
        button->setAutoRaise(true);
        button->setFocusPolicy(Qt::TabFocus);
        button->setToolButtonStyle(Qt::ToolButtonTextOnly);
        row->addWidget(button);
        return button;
    };
    m_back =
        add(tr("Back"), QKeySequence(tr("Alt+Left")), tr("Shows the page that was read before this one."));
    m_on = add(tr("Forward"), QKeySequence(tr("Alt+Right")),
               tr("Shows the page again that Back was pressed on."));
    row->addStretch(1);
    QToolButton* findButton = add(tr("Find in the page"), QKeySequence::Find,
                                  tr("Opens a field for a word to look for in this page."));
    m_back->setObjectName(QStringLiteral("back"));
    m_on->setObjectName(QStringLiteral("forward"));
    connect(m_back, &QToolButton::clicked, m_browser, &QTextBrowser::backward);
    connect(m_on, &QToolButton::clicked, m_browser, &QTextBrowser::forward);
    connect(m_browser, &QTextBrowser::backwardAvailable, m_back, &QWidget::setEnabled);
    connect(m_browser, &QTextBrowser::forwardAvailable, m_on, &QWidget::setEnabled);
    m_back->setEnabled(false);
    m_on->setEnabled(false);
    connect(findButton, &QToolButton::clicked, this, [this] {
        m_findBar->show();
        const QString chosen = m_browser->textCursor().selectedText();
        if (!chosen.isEmpty()) m_find->setText(chosen);
        m_find->setFocus();
        m_find->selectAll();
    });
}

void HelpWindow::makeList() {
    m_list = new QListWidget;
    m_list->setAccessibleName(tr("Pages of the help"));
    m_list->setWhatsThis(tr("All pages of the help, in groups. The chosen one is shown beside the list."));
    m_list->setObjectName(QStringLiteral("pages"));
    for (const PageGroup& group : pageGroups()) {
        auto* head = new QListWidgetItem(group.title, m_list);
        head->setFlags(Qt::NoItemFlags);
        QFont strong = m_list->font();
        strong.setBold(true);
        head->setFont(strong);
        for (const QString& page : group.pages) {
            auto* item = new QListWidgetItem(QStringLiteral("  ") + pageTitle(page), m_list);
            item->setData(Qt::UserRole, page);
            item->setData(Qt::AccessibleTextRole, pageTitle(page));
        }
    }
    connect(m_list, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* now) {
        const QString name = now ? now->data(Qt::UserRole).toString() : QString();
        if (!name.isEmpty() && name != m_browser->page()) m_browser->setSource(QUrl("help:" + name));
    });
}

void HelpWindow::makeFind() {
    m_findBar = new QWidget;
    m_findBar->setObjectName(QStringLiteral("findBar"));
    auto* row = new QHBoxLayout(m_findBar);
    row->setContentsMargins(6, 4, 6, 0);
    m_find = new QLineEdit;
    m_find->setObjectName(QStringLiteral("find"));
    m_find->setWhatsThis(tr("A word to look for in the page. Enter goes on to the next place with it."));
    m_find->setMaximumWidth(findWidth);
    m_find->setAccessibleName(tr("Find in the page"));
    m_find->setPlaceholderText(tr("Find in the page"));
    m_find->setClearButtonEnabled(true);
    m_found = new QLabel;
    m_found->setObjectName(QStringLiteral("found"));
    row->addWidget(m_find);
    row->addWidget(m_found, 1);
    connect(m_find, &QLineEdit::textEdited, this, [this] {
        QTextCursor begin = m_browser->textCursor();
        begin.setPosition(begin.selectionStart()); // a longer word goes on from the same place
        m_browser->setTextCursor(begin);
        find(false);
    });
    const auto on = [this](bool backward) {
        return [this, backward] {
            m_findBar->show();
            find(backward);
        };
    };
    connect(new QShortcut(QKeySequence(tr("F3")), this), &QShortcut::activated, this, on(false));
    connect(new QShortcut(QKeySequence(tr("Shift+F3")), this), &QShortcut::activated, this, on(true));
    connect(m_find, &QLineEdit::returnPressed, this, on(false));
    m_findBar->hide();
}

void HelpWindow::find(bool backward) {
    const QString wanted = m_find->text();
    m_found->clear();
    if (wanted.isEmpty()) return;
    const QTextDocument::FindFlags flags =
        backward ? QTextDocument::FindBackward : QTextDocument::FindFlags();
    if (m_browser->find(wanted, flags)) return;
    const QTextCursor before = m_browser->textCursor();
    m_browser->moveCursor(backward ? QTextCursor::End : QTextCursor::Start);
    if (m_browser->find(wanted, flags)) return m_found->setText(tr("Found from the other end of the page."));
    m_browser->setTextCursor(before);
    m_found->setText(tr("“%1” is not on this page.").arg(wanted));
}

void HelpWindow::open(const QString& page) {
    const bool anew = !isVisible();
    m_browser->setSource(QUrl("help:" + page));
    show();
    raise();
    activateWindow();
    if (anew) m_browser->setFocus(); // the arrows scroll; Tab goes from link to link
}

QString HelpWindow::page() const {
    return m_browser->page();
}

void HelpWindow::showPage(const QString& page) {
    setWindowTitle(tr("%1 – Help").arg(pageTitle(page)));
    m_found->clear();
    const QSignalBlocker quiet(m_list); // it follows; it does not lead
    if (QListWidgetItem* item = itemOf(*m_list, page)) m_list->setCurrentItem(item);
}

void HelpWindow::setTheme(const widgets::Theme& theme) {
    m_browser->setTheme(theme);
    for (int k = 0; k < m_list->count(); ++k)
        if (m_list->item(k)->flags() == Qt::NoItemFlags) m_list->item(k)->setForeground(theme.quietInk);
}

void HelpWindow::keepSize() {
    m_settings.setWindowState(stateName, saveGeometry());
}

void HelpWindow::hideEvent(QHideEvent* event) {
    keepSize();
    QDialog::hideEvent(event);
}

void HelpWindow::reject() {
    if (!m_findBar->isVisible()) return QDialog::reject();
    m_findBar->hide();
    m_browser->setFocus();
}

} // namespace blinkwright::app::help
