#include "widgets/choose/wish_form.h"

#include "core/study/ready.h"
#include "widgets/text/colour_text.h"
#include "widgets/text/flow_layout.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QVBoxLayout>

namespace blinkwright::widgets {

namespace {

constexpr int betweenLines = 4;

} // namespace

class WishForm::Private {
  public:
    explicit Private(WishForm& form) : q(form) {}

    void make() {
        auto* lines = new QVBoxLayout(&q);
        lines->setContentsMargins(0, 0, 0, 0);
        lines->setSpacing(betweenLines);
        sentence = addLine(lines);
        say(tr("Blinking at"));
        field("rate", tr("Rate"), WishField::rate, &WishTexts::rate, 8);
        rangeWords = say(tr("to"));
        field("rateTo", tr("Rate at the other end"), WishField::rateTo, &WishTexts::rateTo, 8);
        rateUnit = choice("rateUnit", tr("Unit of the rate"),
                          {tr("flashes a minute"), tr("hertz"), tr("seconds a cycle")});
        range =
            choice("range", tr("Fixed rate or range"), {tr("(fixed)"), tr("(set by a variable resistor)")});
        say(tr("lit for"));
        field("lit", tr("Lit"), WishField::lit, &WishTexts::lit, 8);
        litUnit = choice("litUnit", tr("Unit of the lit time"), {tr("% of the time"), tr("in each flash")});
        say(tr("with"));
        lamps = choice("lamps", tr("Lamps"), {tr("one lamp"), tr("two lamps taking turns")});
        colour = colourChoice("colour", tr("Colour"));
        secondWords = say(tr("and"));
        second = colourChoice("second", tr("Colour of the second lamp"));
        say(tr("at"));
        field("current", tr("Lamp current"), WishField::current, &WishTexts::current, 8);
        lampTo = choice("lampTo", tr("Where the lamp hangs"),
                        {tr("to ground"), tr("to the supply"), tr("to ground or the supply")});
        say(tr("from"));
        field("supply", tr("Supply"), WishField::supply, &WishTexts::supply, 7);
        say(tr("by a"));
        family = choice("family", tr("Timer"), {tr("bipolar timer"), tr("CMOS timer")});

        pairLine = new QWidget;
        lines->addWidget(pairLine);
        sentence = new FlowLayout(pairLine);
        say(tr("Each lamp is to stay lit for"));
        QLineEdit* stay =
            field("stayLit", tr("How long each lamp stays lit"), WishField::stayLit, &WishTexts::stayLit, 10);
        stay->setPlaceholderText(tr("any time"));
        say(tr("with"));
        equal = choice("equal", tr("Currents or brightness"), {tr("equal currents"), tr("equal brightness")});
        equalWords = say(tr("of lamps of"));
        field("intensity", tr("Luminous intensity"), WishField::intensity, &WishTexts::intensity, 8)
            ->setPlaceholderText(tr("mcd"));
        equalSecondWords = say(tr("and"));
        field("secondIntensity", tr("Luminous intensity of the second lamp"), WishField::secondIntensity,
              &WishTexts::secondIntensity, 8)
            ->setPlaceholderText(tr("mcd"));

        sentence = addLine(lines);
        say(tr("Values come from"));
        source = choice("source", tr("Where values come from"), {tr("preferred series:"), tr("the drawer")});
        r1 = seriesChoice("r1", tr("R1"));
        r2 = seriesChoice("r2", tr("R2"));
        c1 = seriesChoice("c1", tr("C1"));
        openDrawer = new QPushButton(tr("Open the dra&wer…"));
        openDrawer->setObjectName(QStringLiteral("openDrawer"));
        openDrawer->setWhatsThis(
            tr("Opens the list of the parts at hand, to add to it or to see what is left."));
        openDrawer->setAutoDefault(false);
        connect(openDrawer, &QPushButton::clicked, &q, &WishForm::drawerWished);
        sentence->addWidget(openDrawer);
        show();
    }

    void show() {
        const QScopedValueRollback silence(quiet, true);
        for (const Field& one : fields)
            if (one.edit->text() != texts.*one.text) one.edit->setText(texts.*one.text);
        rateUnit->setCurrentIndex(static_cast<int>(texts.rateUnit));
        range->setCurrentIndex(texts.range);
        litUnit->setCurrentIndex(static_cast<int>(texts.litUnit));
        lamps->setCurrentIndex(texts.lamps - 1);
        colour->setCurrentIndex(std::max(0, colour->findData(texts.colour)));
        second->setCurrentIndex(std::max(0, second->findData(texts.second)));
        lampTo->setCurrentIndex(static_cast<int>(texts.lampTo));
        family->setCurrentIndex(texts.cmos);
        equal->setCurrentIndex(texts.equalBrightness);
        source->setCurrentIndex(texts.fromDrawer);
        r1->setCurrentIndex(static_cast<int>(texts.r1));
        r2->setCurrentIndex(static_cast<int>(texts.r2));
        c1->setCurrentIndex(static_cast<int>(texts.c1));
        showFaults();
    }

    void read() {
        if (quiet) return;
        for (const Field& one : fields) texts.*one.text = one.edit->text();
        texts.rateUnit = static_cast<RateUnit>(rateUnit->currentIndex());
        texts.range = range->currentIndex() == 1;
        texts.litUnit = static_cast<LitUnit>(litUnit->currentIndex());
        texts.lamps = lamps->currentIndex() + 1;
        texts.colour = colour->currentData().toString();
        texts.second = second->currentData().toString();
        texts.lampTo = static_cast<study::LampTo>(lampTo->currentIndex());
        texts.cmos = family->currentIndex() == 1;
        texts.equalBrightness = equal->currentIndex() == 1;
        texts.fromDrawer = source->currentIndex() == 1;
        texts.r1 = static_cast<units::Series>(r1->currentIndex());
        texts.r2 = static_cast<units::Series>(r2->currentIndex());
        texts.c1 = static_cast<units::Series>(c1->currentIndex());
        showFaults();
        emit q.changed();
    }

    void showFaults() {
        answer = readWish(texts);
        const bool two = texts.lamps == 2, matched = two && texts.equalBrightness;
        pairLine->setVisible(two);
        for (QWidget* part : std::initializer_list<QWidget*>{secondWords, second}) part->setVisible(two);
        lampTo->setVisible(!two);
        rangeWords->setVisible(texts.range);
        for (QWidget* part : std::initializer_list<QWidget*>{equalWords, equalSecondWords})
            part->setVisible(matched);
        for (const Field& one : fields) {
            const bool isRange = one.field == WishField::rateTo;
            const bool isMatch = one.field == WishField::intensity || one.field == WishField::secondIntensity;
            one.both->setVisible(isRange ? texts.range : isMatch ? matched : true);
            const auto fault = answer.faults.find(one.field);
            const bool wrong = fault != answer.faults.end();
            one.fault->setText(wrong ? fault->second : QString());
            one.fault->setVisible(wrong);
            one.edit->setAccessibleDescription(one.fault->text());
        }
        for (QComboBox* series : {r1, r2, c1}) {
            series->setVisible(!texts.fromDrawer);
            seriesWords[series]->setVisible(!texts.fromDrawer);
        }
        q.updateGeometry();
    }

    void setTheme(const Theme& theme) {
        for (const Field& one : fields) {
            QPalette palette = one.fault->palette();
            palette.setColor(QPalette::WindowText, theme.fault);
            one.fault->setPalette(palette);
        }
    }

    static QString tr(const char* text) { return WishForm::tr(text); }

    WishForm& q;
    WishTexts texts;
    WishRead answer;

  private:
    struct Field {
        WishField field;
        QString WishTexts::*text;
        QWidget* both;
        QLineEdit* edit;
        QLabel* fault;
    };

    static FlowLayout* addLine(QVBoxLayout* lines) {
        auto* line = new QWidget;
        lines->addWidget(line);
        return new FlowLayout(line);
    }
    QLabel* say(const QString& words) {
        auto* label = new QLabel(words);
        sentence->addWidget(label);
        return label;
    }
    /// What each control is for, by its name.
    static QString meaningOf(QStringView name) {
        const std::pair<const char*, QString> meanings[] = {
            {"rate", tr("How often the lamp is to flash, above 0, in the unit beside it.")},
            {"rateTo", tr("The rate with the variable resistor at its other end, in the same unit.")},
            {"lit", tr("How long the lamp is to be lit: a share of the cycle in per cent, or a time, as the "
                       "unit beside it says.")},
            {"current",
             tr("Current of a lit lamp, such as 10 mA. The resistor in series with it follows from this.")},
            {"supply", tr("Voltage of the supply, such as 9 V. It must be one that the chosen timer bears.")},
            {"stayLit", tr("How long each of the two lamps is to stay lit, such as 0.5 s. Left empty, any "
                           "time will do.")},
            {"intensity", tr("Luminous intensity of the lamp as its maker states it, in millicandela; of "
                             "both lamps at one current.")},
            {"secondIntensity", tr("Luminous intensity of the second lamp as its maker states it, in "
                                   "millicandela; of both lamps at one current.")},
            {"rateUnit", tr("Unit of the rate before it. The number that was typed stays.")},
            {"range", tr("One fixed rate, or a range that a variable resistor in series with R2 covers.")},
            {"litUnit", tr("Whether the lit time is a share of each cycle or a time in seconds.")},
            {"lamps", tr("One lamp that goes on and off, or two that are lit by turns.")},
            {"lampTo", tr("A lamp to ground is lit while the output is high, one to the supply while it is "
                          "low. The best of both can be asked for.")},
            {"family", tr("A bipolar timer drives more current; a CMOS timer takes less itself and loses "
                          "less voltage at its output.")},
            {"equal",
             tr("Whether the two lamps get the same current, or currents that make them equally bright.")},
            {"source",
             tr("Preferred series are what shops sell; the drawer is the own stock, with its quantities.")},
            {"colour", tr("Colour of the lamp. It sets the forward voltage, and with it the resistor.")},
            {"second",
             tr("Colour of the second lamp. It sets the forward voltage, and with it the resistor.")}};
        for (const auto& [control, meaning] : meanings)
            if (name == QLatin1String(control)) return meaning;
        return tr("Preferred series of the values to choose from: E24 has 24 values in a decade, E6 has 6. "
                  "More values "
                  "come nearer to the wish."); // R1, R2, C1
    }

    QLineEdit* field(const char* name, const QString& accessible, WishField which, QString WishTexts::*text,
                     int letters) {
        auto* edit = new QLineEdit;
        edit->setObjectName(QLatin1String(name));
        edit->setAccessibleName(accessible);
        edit->setWhatsThis(meaningOf(edit->objectName()));
        edit->setToolTip(accessible);
        sizedByText(*edit, [edit = edit, letters] {
            edit->setFixedWidth(edit->fontMetrics().averageCharWidth() * letters + 16);
        });
        auto* fault = new QLabel;
        fault->setObjectName(QLatin1String(name) + QStringLiteral("Fault"));
        fault->setTextFormat(Qt::PlainText);
        // One word of the sentence: the fault stays beside its field.
        auto* both = new QWidget;
        auto* row = new QHBoxLayout(both);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(edit);
        row->addWidget(fault);
        sentence->addWidget(both);
        fields.push_back({which, text, both, edit, fault});
        connect(edit, &QLineEdit::textEdited, &q, [this] { read(); });
        return edit;
    }
    QComboBox* choice(const char* name, const QString& accessible, const QStringList& choices) {
        auto* list = new QComboBox;
        list->setObjectName(QLatin1String(name));
        list->setAccessibleName(accessible);
        list->setWhatsThis(meaningOf(list->objectName()));
        list->setToolTip(accessible);
        list->addItems(choices);
        sentence->addWidget(list);
        connect(list, &QComboBox::currentIndexChanged, &q, [this] { read(); });
        return list;
    }
    QComboBox* colourChoice(const char* name, const QString& accessible) {
        QComboBox* list = choice(name, accessible, {});
        const QScopedValueRollback silence(quiet, true);
        for (const std::string& one : study::readyColours())
            list->addItem(colourText(one), QString::fromStdString(one));
        return list;
    }
    QComboBox* seriesChoice(const char* name, const QString& part) {
        QLabel* words = say(part);
        QComboBox* list = choice(name, tr("Series of %1").arg(part), {});
        const QScopedValueRollback silence(quiet, true);
        for (const units::Series one : units::allSeries) {
            const auto text = units::name(one);
            list->addItem(QString::fromLatin1(text.data(), static_cast<int>(text.size())));
        }
        seriesWords[list] = words;
        return list;
    }

    FlowLayout* sentence = nullptr; ///< the line that is being made
    std::vector<Field> fields;
    QWidget* pairLine = nullptr;
    QLabel *rangeWords = nullptr, *secondWords = nullptr, *equalWords = nullptr, *equalSecondWords = nullptr;
    QComboBox *rateUnit = nullptr, *range = nullptr, *litUnit = nullptr, *lamps = nullptr, *colour = nullptr,
              *second = nullptr, *lampTo = nullptr, *family = nullptr, *equal = nullptr, *source = nullptr,
              *r1 = nullptr, *r2 = nullptr, *c1 = nullptr;
    std::map<QComboBox*, QLabel*> seriesWords;
    QPushButton* openDrawer = nullptr;
    bool quiet = false; ///< fields are being filled, not changed by the user
};

WishForm::WishForm(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(*this)) {
    setObjectName(QStringLiteral("wish"));
    setAccessibleName(tr("Wish"));
    d->make();
}

WishForm::~WishForm() = default;

void WishForm::setTexts(const WishTexts& texts) {
    d->texts = texts;
    d->show();
}

const WishTexts& WishForm::texts() const {
    return d->texts;
}

bool WishForm::isFine() const {
    return d->answer.faults.empty();
}

const study::Wish& WishForm::wish() const {
    return d->answer.wish;
}

void WishForm::setTheme(const Theme& theme) {
    d->setTheme(theme);
}

} // namespace blinkwright::widgets
