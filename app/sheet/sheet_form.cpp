#include "app/sheet/sheet_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

namespace blinkwright::app::sheet {

namespace {

constexpr int mostVariants = 999'999, textLines = 3, listRows = 8;

QString today() {
    return QLocale().toString(QDate::currentDate(), QLocale::LongFormat);
}

} // namespace

struct SheetForm::Private {
    explicit Private(SheetForm& form) : q(form) {}

    void make() {
        auto* whole = new QVBoxLayout(&q);
        whole->setContentsMargins(0, 0, 0, 0);
        makeChoices(*whole);
        makeTopics(*whole);
        makeTexts(*whole);
    }

    void makeChoices(QVBoxLayout& whole) {
        copy = new QComboBox;
        copy->setObjectName(QStringLiteral("copy"));
        copy->addItem(tr("Full lab sheet"), static_cast<int>(Copy::full));
        copy->addItem(tr("Student copy, with blanks"), static_cast<int>(Copy::student));
        copy->addItem(tr("Answer key"), static_cast<int>(Copy::answers));
        number = new QSpinBox;
        number->setObjectName(QStringLiteral("variant"));
        number->setRange(0, mostVariants);
        number->setSpecialValueText(tr("The circuit's own"));
        number->setToolTip(
            tr("A number gives other preferred values of the timing parts, the same ones for the student "
               "copy and its answer key."));
        paper = new QComboBox;
        paper->setObjectName(QStringLiteral("paper"));
        paper->addItem(tr("A4"), static_cast<int>(QPageSize::A4));
        paper->addItem(tr("Letter"), static_cast<int>(QPageSize::Letter));
        beside = new QCheckBox(tr("Set &B beside Set A"));
        beside->setObjectName(QStringLiteral("beside"));
        beside->setChecked(true);
        auto* form = new QFormLayout;
        form->addRow(tr("S&heet:"), copy);
        form->addRow(tr("&Values:"), number);
        form->addRow(tr("Pa&per:"), paper);
        form->addRow(QString(), beside);
        whole.addLayout(form);
        copy->setAccessibleName(tr("Sheet"));
        copy->setWhatsThis(
            tr("The full sheet has everything, the student copy leaves blanks to fill in, and the answer key "
               "says what belongs there."));
        number->setWhatsThis(
            tr("Gives each student other values: every number from 1 on is another variant of the timing "
               "parts. 0 leaves those of the circuit."));
        paper->setWhatsThis(tr("Size of the paper that the pages are laid out for."));
        beside->setWhatsThis(
            tr("Tells the values and figures of both sets side by side. Without it the sheet is of Set A "
               "alone."));
        number->setAccessibleName(tr("Number of the variant of values"));
        paper->setAccessibleName(tr("Paper"));
        connect(copy, &QComboBox::currentIndexChanged, &q, &SheetForm::choiceChanged);
        connect(number, &QSpinBox::valueChanged, &q, [this](int seed) {
            beside->setEnabled(seed == 0); // a variant is of one set
            emit q.choiceChanged();
        });
        connect(beside, &QCheckBox::toggled, &q, &SheetForm::choiceChanged);
        connect(paper, &QComboBox::currentIndexChanged, &q, &SheetForm::wordsChanged);
    }

    void makeTopics(QVBoxLayout& whole) {
        topics = new QListWidget;
        topics->setObjectName(QStringLiteral("sections"));
        topics->setAccessibleName(tr("Sections of the sheet"));
        topics->setWhatsThis(
            tr("Which sections the sheet has. The space bar ticks the chosen one or leaves it out."));
        for (const Topic topic : allTopics) {
            auto* item = new QListWidgetItem(titleOf(topic), topics);
            item->setData(Qt::UserRole, QLatin1String(keyOf(topic)));
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
            item->setCheckState(Qt::Checked);
        }
        topics->setMinimumHeight(listRows * topics->sizeHintForRow(0));
        auto* label = new QLabel(tr("&Sections"));
        label->setBuddy(topics);
        whole.addWidget(label);
        whole.addWidget(topics, 1);
        connect(topics, &QListWidget::itemChanged, &q, &SheetForm::choiceChanged);
    }

    void makeTexts(QVBoxLayout& whole) {
        auto* form = new QFormLayout;
        const auto line = [&](const char* name, const QString& label, const QString& meaning) {
            auto* field = new QLineEdit;
            field->setWhatsThis(meaning);
            field->setObjectName(QLatin1String(name));
            field->setAccessibleName(QString(label).remove(u'&').remove(u':'));
            form->addRow(label, field);
            connect(field, &QLineEdit::textChanged, &q, &SheetForm::wordsChanged);
            return field;
        };
        title = line("title", tr("&Title:"),
                     tr("Heading of the sheet. Left empty, it is the title of the circuit."));
        author = line("author", tr("&Author:"),
                      tr("Who has written the sheet. It is remembered for the next one."));
        partner = line("partner", tr("Pa&rtner:"),
                       tr("With whom the work was done. It is remembered for the next sheet."));
        group = line("group", tr("&Group:"),
                     tr("Class or group at the head of the sheet. It is remembered for the next one."));
        date = line("date", tr("&Date:"),
                    tr("Day at the head of the sheet: today, unless another text is typed."));
        const auto area = [&](const char* name, const QString& label, const QString& hint,
                              const QString& meaning) {
            auto* field = new QPlainTextEdit;
            field->setWhatsThis(meaning);
            field->setObjectName(QLatin1String(name));
            field->setAccessibleName(QString(label).remove(u'&').remove(u':'));
            field->setPlaceholderText(hint);
            field->setTabChangesFocus(true);
            field->setFixedHeight(textLines * field->fontMetrics().lineSpacing() + 14);
            form->addRow(label, field);
            connect(field, &QPlainTextEdit::textChanged, &q, &SheetForm::wordsChanged);
            return field;
        };
        title->setPlaceholderText(tr("Title of the circuit"));
        aim = area("aim", tr("Ai&m:"), tr("Empty: the usual one"),
                   tr("What the work is to show. Left empty, the sheet has the usual sentence."));
        method = area("method", tr("Meth&od:"), tr("Empty: the usual steps"),
                      tr("What is done, step by step. Left empty, the sheet has the usual steps."));
        conclusions = area("conclusions", tr("&Conclusions:"), tr("Empty: lines to write on"),
                           tr("What was found out. Left empty, the sheet has lines to write on by hand."));
        whole.addLayout(form);
    }

    std::vector<std::pair<QString, QLineEdit*>> habitLines() const {
        return {{QStringLiteral("author"), author},
                {QStringLiteral("partner"), partner},
                {QStringLiteral("group"), group}};
    }
    std::vector<std::pair<QString, QPlainTextEdit*>> areas() const {
        return {{QStringLiteral("aim"), aim},
                {QStringLiteral("method"), method},
                {QStringLiteral("conclusions"), conclusions}};
    }

    static QString tr(const char* text) { return SheetForm::tr(text); }

    SheetForm& q;
    QComboBox *copy = nullptr, *paper = nullptr;
    QSpinBox* number = nullptr;
    QCheckBox* beside = nullptr;
    QListWidget* topics = nullptr;
    QLineEdit *title = nullptr, *author = nullptr, *partner = nullptr, *group = nullptr, *date = nullptr;
    QPlainTextEdit *aim = nullptr, *method = nullptr, *conclusions = nullptr;
};

SheetForm::SheetForm(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(*this)) {
    d->make();
    d->date->setText(today());
}

SheetForm::~SheetForm() = default;

SheetWords SheetForm::words() const {
    return {d->title->text(), d->author->text(),     d->partner->text(),       d->group->text(),
            d->date->text(),  d->aim->toPlainText(), d->method->toPlainText(), d->conclusions->toPlainText()};
}

SheetChoice SheetForm::choice() const {
    SheetChoice choice;
    choice.topics.clear();
    for (int k = 0; k < d->topics->count(); ++k) {
        const QListWidgetItem* item = d->topics->item(k);
        const std::optional<Topic> topic = topicNamed(item->data(Qt::UserRole).toString());
        if (topic && item->checkState() == Qt::Checked) choice.topics.insert(*topic);
    }
    choice.copy = static_cast<Copy>(d->copy->currentData().toInt());
    return choice;
}

std::optional<std::uint64_t> SheetForm::variant() const {
    if (d->number->value() == 0) return {};
    return static_cast<std::uint64_t>(d->number->value());
}

QPageSize::PageSizeId SheetForm::pageSize() const {
    return static_cast<QPageSize::PageSizeId>(d->paper->currentData().toInt());
}

bool SheetForm::besideB() const {
    return d->beside->isChecked();
}

void SheetForm::setBesideOffered(bool offered) {
    d->beside->setVisible(offered);
}

QVariantMap SheetForm::habits() const {
    QVariantMap all;
    for (const auto& [name, field] : d->habitLines()) all[name] = field->text();
    all[QStringLiteral("paper")] = d->paper->currentIndex();
    QStringList left;
    for (int k = 0; k < d->topics->count(); ++k)
        if (d->topics->item(k)->checkState() != Qt::Checked)
            left << d->topics->item(k)->data(Qt::UserRole).toString();
    all[QStringLiteral("left out")] = left;
    return all;
}

void SheetForm::setHabits(const QVariantMap& habits) {
    for (const auto& [name, field] : d->habitLines()) field->setText(habits.value(name).toString());
    d->paper->setCurrentIndex(
        std::clamp(habits.value(QStringLiteral("paper")).toInt(), 0, d->paper->count() - 1));
    const QStringList left = habits.value(QStringLiteral("left out")).toStringList();
    for (int k = 0; k < d->topics->count(); ++k)
        if (left.contains(d->topics->item(k)->data(Qt::UserRole).toString()))
            d->topics->item(k)->setCheckState(Qt::Unchecked);
}

QVariantMap SheetForm::texts() const {
    QVariantMap all;
    all[QStringLiteral("title")] = d->title->text();
    // Today's date is no answer: tomorrow it would be a wrong one.
    if (d->date->text() != today()) all[QStringLiteral("date")] = d->date->text();
    for (const auto& [name, field] : d->areas()) all[name] = field->toPlainText();
    return all;
}

void SheetForm::setTexts(const QVariantMap& texts) {
    d->title->setText(texts.value(QStringLiteral("title")).toString());
    d->date->setText(texts.value(QStringLiteral("date"), today()).toString());
    for (const auto& [name, field] : d->areas()) field->setPlainText(texts.value(name).toString());
}

void SheetForm::setTheme(const widgets::Theme& theme) {
    // The style draws the frame of a box to tick in a darker form of this colour: on dark ground it would be
    // gone.
    QPalette frames = theme.palette();
    frames.setColor(QPalette::Window, theme.quietInk);
    d->topics->setPalette(frames);
}

} // namespace blinkwright::app::sheet
