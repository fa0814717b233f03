#include "app/left_behind_dialog.h"

#include "app/help/help_pages.h"
#include "widgets/text/text_sized.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace blinkwright::app {

namespace {

QString nameOf(const Recovery::Left& left) {
    const QString file = QFileInfo(left.path).fileName();
    if (left.path.isEmpty())
        return left.title.isEmpty() ? LeftBehindDialog::tr("New circuit without a name")
                                    : LeftBehindDialog::tr("%1 (new circuit)").arg(left.title);
    return left.title.isEmpty() ? file : LeftBehindDialog::tr("%1 (%2)").arg(left.title, file);
}

} // namespace

LeftBehindDialog::LeftBehindDialog(QWidget* parent, std::vector<Recovery::Left> list)
    : QDialog(parent), m_list(std::move(list)), m_names(new QListWidget) {
    setWindowTitle(tr("Unsaved changes from last time"));
    setObjectName(QStringLiteral("left behind"));
    help::setPage(this, QStringLiteral("files"));
    auto* words =
        new QLabel(tr("Blinkwright ended without closing. These circuits have changes that were not "
                      "saved; their own files are as they were last saved."));
    words->setWordWrap(true);
    m_names->setAccessibleName(tr("Circuits with unsaved changes"));
    m_names->setWhatsThis(
        tr("What was not saved when the program ended last time. Enter opens the chosen one as it was."));
    for (const Recovery::Left& left : m_list) {
        const QString when = QLocale().toString(left.when.toLocalTime(), QLocale::ShortFormat);
        auto* item = new QListWidgetItem(tr("%1, changed %2").arg(nameOf(left), when), m_names);
        item->setToolTip(left.path);
    }
    m_names->setCurrentRow(0);

    auto* buttons = new QDialogButtonBox;
    QPushButton* open = buttons->addButton(tr("&Open it"), QDialogButtonBox::AcceptRole);
    QPushButton* remove = buttons->addButton(tr("&Discard it…"), QDialogButtonBox::DestructiveRole);
    QPushButton* later = buttons->addButton(tr("&Later"), QDialogButtonBox::RejectRole);
    later->setToolTip(tr("They are offered again at the next start"));
    open->setWhatsThis(
        tr("Opens the chosen circuit with its unsaved changes. Its file changes only when it is saved."));
    remove->setWhatsThis(tr("Throws the unsaved changes of the chosen circuit away, after a question."));
    later->setWhatsThis(tr("Keeps them all, to be offered again at the next start."));
    open->setDefault(true);
    connect(open, &QPushButton::clicked, this, &QDialog::accept);
    connect(remove, &QPushButton::clicked, this, &LeftBehindDialog::discard);
    connect(later, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_names, &QListWidget::itemActivated, this, &QDialog::accept);

    auto* column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(m_names, 1);
    column->addWidget(buttons);
    resize(widgets::withText(*this, QSize(520, 260)));
    m_names->setFocus();
}

std::optional<Recovery::Left> LeftBehindDialog::chosen() const {
    const int row = m_names->currentRow();
    if (row < 0 || row >= static_cast<int>(m_list.size())) return {};
    return m_list[static_cast<std::size_t>(row)];
}

void LeftBehindDialog::discard() {
    const std::optional<Recovery::Left> left = chosen();
    if (!left) return;
    QMessageBox box(QMessageBox::Question, tr("Discard unsaved changes"),
                    tr("Discard the unsaved changes of %1? They cannot be brought back.").arg(nameOf(*left)),
                    QMessageBox::Discard | QMessageBox::Cancel, this);
    box.setTextFormat(Qt::PlainText);
    box.setDefaultButton(QMessageBox::Cancel);
    if (box.exec() != QMessageBox::Discard) return;
    const int row = m_names->currentRow();
    emit discardWished(*left);
    m_list.erase(m_list.begin() + row);
    delete m_names->takeItem(row);
    if (m_list.empty()) reject();
}

} // namespace blinkwright::app
