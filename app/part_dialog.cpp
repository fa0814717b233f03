#include "app/part_dialog.h"

#include "app/help/help_pages.h"
#include "app/value_text.h"
#include "core/base/wording.h"
#include "core/circuit/part_edits.h"
#include "core/devices/board.h"
#include "widgets/hookup/part_view.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/part_meaning.h"
#include "widgets/text/said.h"
#include "widgets/text/scrolled_form.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace blinkwright::app {

using namespace circuit;

namespace {

constexpr int leastField = 220;

QString text(std::string_view s) {
    return QString::fromUtf8(s.data(), static_cast<qsizetype>(s.size()));
}
/// Of the tables of kinds and keys.
using widgets::said;
using widgets::sentenceCase;

} // namespace

PartDialog::PartDialog(QWidget* parent, Circuit circuit, PartId part, Apply apply)
    : QDialog(parent), m_circuit(std::move(circuit)), m_part(part), m_apply(std::move(apply)),
      m_name(new QLineEdit), m_why(new QLabel) {
    help::setPage(this, QStringLiteral("hookup"));
    const Part& shown = *m_circuit.find(part);
    const KindInfo& kind = info(shown.kind);
    setWindowTitle(
        tr("%1, %2").arg(QString::fromStdString(shown.ref), widgets::hookup::kindText(shown.kind)));
    auto* inside = new QWidget;
    auto* form = new QFormLayout(inside);
    form->setContentsMargins(0, 0, 0, 0);
    m_name->setText(QString::fromStdString(shown.ref));
    m_name->setObjectName(QStringLiteral("name"));
    m_name->setWhatsThis(
        tr("The part's name in drawing, lists and findings, such as R1. No other part may have it."));
    form->addRow(tr("&Name"), m_name);
    connect(m_name, &QLineEdit::textEdited, m_why, &QLabel::clear);
    for (const KeyInfo& key : kind.keys)
        if (key.shape != Shape::overrides) addRow(*form, key);
    m_why->setWordWrap(true);
    m_why->setTextFormat(Qt::PlainText);
    m_why->setObjectName(QStringLiteral("why"));
    m_why->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    widgets::sizedByText(*m_why, [this] { m_why->setMinimumHeight(2 * m_why->fontMetrics().lineSpacing()); });
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &PartDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &PartDialog::reject);
    auto* whole = new QVBoxLayout(this);
    whole->addWidget(new widgets::ScrolledForm(inside, tr("Name and values")), 1);
    whole->addWidget(m_why);
    whole->addWidget(buttons);
    widgets::growWithTexts(*this);
    m_name->selectAll();
}

void PartDialog::addRow(QFormLayout& form, const KeyInfo& key) {
    const auto stated = m_circuit.value(PartSet::A, m_part, key.key);
    Circuit plain = m_circuit; // to ask what the default is
    (void)circuit::apply(plain, {edits::SetValue{Layer::setA, m_part, std::string(key.key), {}}});
    (void)circuit::apply(plain, {edits::SetValue{Layer::part, m_part, std::string(key.key), {}}});
    const auto fallen = devices::effectiveValue(plain, PartSet::A, m_part, key.key);
    const QString byDefault = fallen ? QString::fromStdString(valueText(key, *fallen)) : tr("none");
    Row row{&key, nullptr, nullptr, {}, 0};
    if (key.shape == Shape::flag || key.shape == Shape::word) {
        row.choice = new QComboBox;
        row.choice->addItem(tr("%1 (default)").arg(byDefault));
        if (key.shape == Shape::flag) {
            row.choice->addItem(tr("yes"), true);
            row.choice->addItem(tr("no"), false);
        } else {
            for (const std::string_view word : key.words) row.choice->addItem(said(word), text(word));
        }
        if (stated) {
            const auto* flag = std::get_if<bool>(&*stated);
            const auto* word = std::get_if<std::string>(&*stated);
            row.choice->setCurrentIndex(
                row.choice->findData(flag ? QVariant(*flag) : QVariant(QString::fromStdString(*word))));
        }
        row.chosenBefore = row.choice->currentIndex();
        form.addRow(sentenceCase(said(key.label)), row.choice);
    } else {
        row.field = new QLineEdit;
        if (stated) row.before = QString::fromStdString(valueText(key, *stated));
        row.field->setText(row.before);
        widgets::sizedByText(*row.field, [field = row.field] {
            field->setMinimumWidth(widgets::withText(*field, leastField));
        });
        if (!key.required) row.field->setPlaceholderText(tr("%1 (default)").arg(byDefault));
        connect(row.field, &QLineEdit::textEdited, m_why, &QLabel::clear);
        form.addRow(sentenceCase(said(key.label)), row.field);
    }
    (row.field ? static_cast<QWidget*>(row.field) : row.choice)
        ->setWhatsThis(widgets::valueMeaning(m_circuit.find(m_part)->kind, key.key));
    m_rows.push_back(row);
}

QLineEdit* PartDialog::field(const std::string& key) const {
    for (const Row& row : m_rows)
        if (row.key->key == key) return row.field;
    return nullptr;
}

QComboBox* PartDialog::choice(const std::string& key) const {
    for (const Row& row : m_rows)
        if (row.key->key == key) return row.choice;
    return nullptr;
}

Result<Edit> PartDialog::edit() const {
    edits::Group group;
    m_wrong = m_name;
    const std::string ref = m_name->text().trimmed().toStdString();
    const Part& part = *m_circuit.find(m_part);
    if (ref != part.ref) {
        auto rename = renamePart(m_circuit, m_part, ref);
        if (!rename) return Fault{tr("Name").toStdString(), rename.fault().text};
        group.edits.push_back(std::move(rename).value());
    }
    for (const Row& row : m_rows) {
        std::optional<Value> wanted;
        m_wrong = row.field ? static_cast<QWidget*>(row.field) : row.choice;
        if (row.choice) {
            if (row.choice->currentIndex() == row.chosenBefore) continue;
            const QVariant picked = row.choice->currentData();
            if (row.key->shape == Shape::flag && picked.isValid())
                wanted = picked.toBool();
            else if (picked.isValid())
                wanted = picked.toString().toStdString();
        } else {
            const QString typed = row.field->text().trimmed();
            if (typed == row.before) continue;
            if (!typed.isEmpty()) {
                auto value = valueFromText(*row.key, typed.toStdString());
                if (!value) return Fault{wording::inWords(row.key->label), value.fault().text};
                wanted = std::move(value).value();
            }
        }
        const std::string key(row.key->key);
        if (wanted) {
            if (auto ok = Circuit::canSet(part.kind, key, *wanted); !ok)
                return Fault{wording::inWords(row.key->label), ok.fault().text};
            group.edits.push_back(setValue(m_circuit, PartSet::A, m_part, key, *wanted));
            continue;
        }
        if (row.key->required)
            return Fault{wording::inWords(row.key->label), tr("must be stated").toStdString()};
        if (m_circuit.overrides(PartSet::A, m_part).contains(key))
            group.edits.push_back({edits::SetValue{Layer::setA, m_part, key, {}}});
        group.edits.push_back({edits::SetValue{Layer::part, m_part, key, {}}});
    }
    if (group.edits.size() > 1) group.text = wording::inWords("Change %1", part.ref);
    return Edit{std::move(group)};
}

void PartDialog::accept() {
    const Result<Edit> wanted = edit();
    if (!wanted) return refuse(QString::fromStdString(wanted.fault().message()), m_wrong);
    if (!std::get<edits::Group>(wanted.value().kind).edits.empty())
        if (const Result<void> done = m_apply(wanted.value()); !done)
            return refuse(QString::fromStdString(done.fault().message()), m_name);
    QDialog::accept();
}

void PartDialog::refuse(const QString& why, QWidget* where) {
    m_why->setText(why);
    where->setFocus();
    if (auto* field = qobject_cast<QLineEdit*>(where)) field->selectAll();
}

} // namespace blinkwright::app
