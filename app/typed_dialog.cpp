#include "app/typed_dialog.h"

#include "app/help/help_pages.h"
#include "widgets/text/scrolled_form.h"
#include "widgets/text/text_sized.h"

#include <QCompleter>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

namespace blinkwright::app {

namespace {

constexpr int typedLeast = 220;

} // namespace

TypedDialog::TypedDialog(QWidget* parent, const QString& title, const std::vector<Field>& fields, Done done)
    : QDialog(parent), m_why(new QLabel), m_done(std::move(done)) {
    setWindowTitle(title);
    help::setPage(this, QStringLiteral("hookup"));
    auto* form = new QFormLayout(this);
    for (const Field& wanted : fields) {
        auto* edit = new QLineEdit(wanted.text);
        edit->setWhatsThis(wanted.meaning);
        if (!wanted.choices.isEmpty()) {
            auto* completer = new QCompleter(wanted.choices, edit);
            completer->setCaseSensitivity(Qt::CaseInsensitive);
            completer->setFilterMode(Qt::MatchContains);
            completer->setCompletionMode(QCompleter::PopupCompletion);
            edit->setCompleter(completer);
        }
        widgets::sizedByText(*edit, [edit] { edit->setMinimumWidth(widgets::withText(*edit, typedLeast)); });
        form->addRow(wanted.label, edit);
        connect(edit, &QLineEdit::textEdited, m_why, &QLabel::clear);
        m_fields.push_back(edit);
    }
    m_why->setWordWrap(true);
    m_why->setTextFormat(Qt::PlainText);
    m_why->setObjectName(QStringLiteral("why"));
    widgets::sizedByText(*m_why, [this] { m_why->setMinimumHeight(2 * m_why->fontMetrics().lineSpacing()); });
    m_why->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    form->addRow(m_why);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &TypedDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &TypedDialog::reject);
    form->addRow(buttons);
    widgets::growWithTexts(*this);
    if (m_fields.size() > 1 && !m_fields[0]->text().isEmpty() && !m_fields[0]->text().endsWith(u':'))
        m_fields[1]->setFocus();
}

TypedDialog* TypedDialog::ask(QWidget* parent, const QString& title, const std::vector<Field>& fields,
                              Done done) {
    auto* dialog = new TypedDialog(parent, title, fields, std::move(done));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

void TypedDialog::accept() {
    QStringList typed;
    for (const QLineEdit* field : m_fields) typed << field->text();
    if (const Result<void> done = m_done(typed); !done) {
        m_why->setText(QString::fromStdString(done.fault().message()));
        m_fields.front()->setFocus();
        m_fields.front()->selectAll();
        return;
    }
    QDialog::accept();
}

} // namespace blinkwright::app
