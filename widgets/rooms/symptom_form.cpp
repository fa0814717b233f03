#include "widgets/rooms/symptom_form.h"

#include "widgets/rooms/quantity_field.h"
#include "widgets/rooms/reading_shown.h"
#include "widgets/text/flow_layout.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/said.h"
#include "widgets/text/text_sized.h"

#include <QCheckBox>
#include <QCoreApplication>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <map>

namespace blinkwright::widgets {

namespace {

using study::Quantity;

enum SymptomColumn { placeColumn, firstFigure, symptomColumns = firstFigure + 6 };
constexpr std::array shownQuantities{Quantity::mean, Quantity::least, Quantity::most};
constexpr int symptomRowSize = 24, figureWidth = 66, placeLeast = 178;

int expectedColumn(std::size_t quantity) {
    return firstFigure + 2 * static_cast<int>(quantity);
}
int readColumn(std::size_t quantity) {
    return expectedColumn(quantity) + 1;
}

QLabel* heading(const QString& text) {
    auto* label = new QLabel(QStringLiteral("<b>%1</b>").arg(text.toHtmlEscaped()));
    label->setTextFormat(Qt::RichText);
    return label;
}

units::Unit unitOf(const study::ReadingPlace& place) {
    return place.isVoltage() ? units::Unit::volt : units::Unit::ampere;
}

} // namespace

class SymptomForm::Private {
  public:
    explicit Private(SymptomForm& form) : q(form), theme(Theme::of(Theme::Mode::light)) {}

    void make() {
        auto* ticks = new QWidget;
        auto* flow = new FlowLayout(ticks, 14, 4);
        for (const study::Symptom symptom : study::allSymptoms) {
            auto* box = new QCheckBox(sentenceCase(said(words(symptom))));
            box->setObjectName(QString::fromUtf8(words(symptom).data(), words(symptom).size()));
            box->setWhatsThis(tr(
                "Tick what is seen on the board. Faults that would look otherwise get less likely; what is "
                "not ticked says nothing."));
            connect(box, &QCheckBox::toggled, &q, &SymptomForm::changed);
            boxes[symptom] = box;
            flow->addWidget(box);
        }
        rate = new QuantityField;
        rate->setObjectName(QStringLiteral("rate"));
        rate->setPlaceholderText(tr("not counted"));
        sizedByText(*rate, [this] {
            rate->setFixedWidth(rate->fontMetrics().horizontalAdvance(rate->placeholderText() + "00") + 20);
        });
        auto* rateWords = new QLabel(tr("&Flashes counted, a minute:"));
        rateWords->setBuddy(rate);
        rate->setAccessibleName(tr("Flashes counted, a minute"));
        rate->setWhatsThis(tr(
            "How many flashes were counted in a minute, above 0; 10 flashes in 4 s are 150. Left empty, the "
            "rate counts for nothing."));
        connect(rate, &QLineEdit::editingFinished, &q, [this] { readRate(); });
        auto* counted = new QHBoxLayout;
        counted->addWidget(rateWords);
        counted->addWidget(rate);
        counted->addStretch(1);
        makeTable();
        auto* column = new QVBoxLayout(&q);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(heading(tr("What is seen")));
        column->addWidget(ticks);
        column->addLayout(counted);
        column->addSpacing(6);
        column->addWidget(heading(tr("What was measured")));
        hint = new QLabel(
            tr("Expected readings, and cells beside them for what the meter shows. Black lead on 0 V, "
               "the other on the leg itself."));
        hint->setWordWrap(true);
        column->addWidget(hint);
        column->addWidget(table, 1);
    }

    void makeTable() {
        table = new QTableWidget(0, symptomColumns);
        table->setTabKeyNavigation(false); // the arrows go from cell to cell, and Tab leaves
        table->setObjectName(QStringLiteral("measured"));
        table->setAccessibleName(tr("Readings of the meter, with the expected ones"));
        table->setWhatsThis(tr(
            "What a meter shows at each place of a sound board: mean, least and most. Type what yours shows "
            "beside it, such as 5.9 or 12 mA; an empty cell counts for nothing."));
        table->setHorizontalHeaderLabels(
            {tr("Place"), tr("Mean"), tr("read"), tr("Least"), tr("read"), tr("Most"), tr("read")});
        table->horizontalHeaderItem(placeColumn)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        table->verticalHeader()->hide();
        rowsByText(*table, symptomRowSize);
        table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        table->horizontalHeader()->setHighlightSections(false);
        table->horizontalHeader()->setMinimumSectionSize(40);
        table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        table->horizontalHeader()->setSectionResizeMode(placeColumn, QHeaderView::Stretch);
        sizedByText(*table, [this] {
            const int width = withText(*table, figureWidth);
            for (int column = firstFigure; column < symptomColumns; ++column)
                table->setColumnWidth(column, width);
            table->setMinimumWidth(withText(*table, placeLeast) + 6 * width + 24);
        });
        table->setSelectionMode(QAbstractItemView::SingleSelection);
        table->setEditTriggers(QAbstractItemView::AllEditTriggers);
        table->setShowGrid(false);
        connect(table, &QTableWidget::itemChanged, &q, [this](QTableWidgetItem* item) { readCell(item); });
    }

    void readRate() {
        const QString text = rate->text().trimmed();
        std::optional<double> now;
        if (!text.isEmpty()) {
            const Result<double> number = units::parseQuantity(text.toStdString(), units::Unit::none);
            if (!number || !(number.value() > 0)) {
                rate->selectAll();
                emit q.refused(number ? tr("A rate is above 0.")
                                      : QString::fromStdString(number.fault().message()));
            } else {
                now = number.value() / 60;
            }
        }
        if (std::exchange(rate_Hz, now) != now) emit q.changed();
    }

    void readCell(QTableWidgetItem* item) {
        const auto place = static_cast<std::size_t>(item->row());
        if (!library || place >= library->places.size()) return;
        const auto quantity = static_cast<std::size_t>((item->column() - firstFigure) / 2);
        const auto key = std::pair{library->places[place].name + "/" + library->places[place].words,
                                   shownQuantities[quantity]};
        const QString text = item->text().trimmed();
        Entry entry{text, std::nullopt};
        if (!text.isEmpty()) {
            const Result<double> number =
                units::parseQuantity(text.toStdString(), unitOf(library->places[place]));
            if (number)
                entry.value = number.value();
            else
                emit q.refused(QString::fromStdString(number.fault().message()));
        }
        if (text.isEmpty())
            entries.erase(key);
        else
            entries[key] = entry;
        mark(*item, entry.value.has_value() || text.isEmpty());
        emit q.changed();
    }

    /// A text that is no quantity stays, so that it can be mended.
    void mark(QTableWidgetItem& item, bool good) {
        const QSignalBlocker quiet(table);
        item.setForeground(good ? theme.ink : theme.fault);
        QFont font = table->font();
        font.setStrikeOut(!good);
        item.setFont(font);
    }

    void fill() {
        const QSignalBlocker quiet(table);
        table->setRowCount(library ? static_cast<int>(library->places.size()) : 0);
        for (int row = 0; row < table->rowCount(); ++row) fillRow(row);
        bool pair = false;
        if (library && !library->cases.empty()) pair = library->cases.front().behaviour.lamps.size() > 1;
        for (const auto& [symptom, box] : boxes) {
            const bool shown = pair || !wantsTwoLamps(symptom);
            if (!shown) {
                const QSignalBlocker still(box);
                box->setChecked(false);
            }
            box->setVisible(shown);
        }
    }
    void fillRow(int row) {
        const auto at = static_cast<std::size_t>(row);
        const study::ReadingPlace& place = library->places[at];
        auto* name = new QTableWidgetItem(QString::fromStdString(place.words));
        name->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        table->setItem(row, placeColumn, name);
        const auto& readings = library->cases.front().behaviour.readings;
        for (std::size_t k = 0; k < shownQuantities.size(); ++k) {
            const QString expected =
                at < readings.size() ? readingShown(place, readings[at].of(shownQuantities[k])) : QString();
            auto* text = new QTableWidgetItem(expected);
            text->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
            text->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            text->setForeground(theme.quietInk);
            table->setItem(row, expectedColumn(k), text);
            const auto known = entries.find({place.name + "/" + place.words, shownQuantities[k]});
            auto* read = new QTableWidgetItem(known == entries.end() ? QString() : known->second.text);
            read->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable);
            read->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            read->setBackground(theme.window);
            read->setData(
                Qt::AccessibleTextRole,
                tr("%1, %2 measured").arg(name->text(), sentenceCase(said(study::name(shownQuantities[k])))));
            table->setItem(row, readColumn(k), read);
            mark(*read, known == entries.end() || known->second.value.has_value());
        }
    }

    static QString tr(const char* text) { return SymptomForm::tr(text); }

    struct Entry {
        QString text;
        std::optional<double> value;
    };

    SymptomForm& q;
    Theme theme;
    std::map<study::Symptom, QCheckBox*> boxes;
    QuantityField* rate = nullptr;
    QLabel* hint = nullptr;
    QTableWidget* table = nullptr;
    std::shared_ptr<const study::FaultLibrary> library;
    std::map<std::pair<std::string, Quantity>, Entry> entries; ///< by the place's name and words
    std::optional<double> rate_Hz;
};

SymptomForm::SymptomForm(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(*this)) {
    d->make();
}

SymptomForm::~SymptomForm() = default;

void SymptomForm::setLibrary(std::shared_ptr<const study::FaultLibrary> library) {
    d->library = std::move(library);
    d->fill();
}

study::Observation SymptomForm::observation() const {
    study::Observation seen;
    for (const auto& [symptom, box] : d->boxes)
        if (box->isChecked()) seen.symptoms.insert(symptom);
    seen.rate_Hz = d->rate_Hz;
    for (std::size_t k = 0; d->library && k < d->library->places.size(); ++k)
        for (const Quantity quantity : shownQuantities) {
            const study::ReadingPlace& place = d->library->places[k];
            const auto known = d->entries.find({place.name + "/" + place.words, quantity});
            if (known != d->entries.end() && known->second.value)
                seen.readings.push_back({k, quantity, *known->second.value});
        }
    return seen;
}

void SymptomForm::reset() {
    for (const auto& [symptom, box] : d->boxes) {
        const QSignalBlocker quiet(box);
        box->setChecked(false);
    }
    d->rate->clear();
    d->rate_Hz.reset();
    d->entries.clear();
    setLibrary(nullptr);
}

void SymptomForm::setTheme(const Theme& theme) {
    d->theme = theme;
    QPalette quiet = d->hint->palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    d->hint->setPalette(quiet);
    d->fill();
}

} // namespace blinkwright::widgets
