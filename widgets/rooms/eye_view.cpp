#include "widgets/rooms/eye_view.h"

#include "widgets/text/figure_text.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/rows_by_contents.h"
#include "widgets/text/said.h"
#include "widgets/text/signs.h"

#include <QHeaderView>

#include <algorithm>

namespace blinkwright::widgets {

namespace {

using study::EyeReading;

QString rhythmText(study::Rhythm rhythm) {
    const QString chart = QLatin1String(chartText(rhythm).data());
    if (chart.isEmpty()) return EyeView::tr("none has this rate");
    return EyeView::tr("%1 (%2)").arg(said(name(rhythm)), chart);
}

QString rangeText(const study::LightUse& use) {
    QString text = EyeView::tr("%1 to %2 a minute").arg(use.least_perMinute).arg(use.most_perMinute);
    if (use.leastLit > 0 || use.mostLit < 1)
        text += EyeView::tr(", lit %1 to %2 % of the time")
                    .arg(qRound(100 * use.leastLit))
                    .arg(qRound(100 * use.mostLit));
    if (use.turns) text += EyeView::tr(", two lamps taking turns");
    return text;
}

} // namespace

EyeView::EyeView(QWidget* parent) : QTableWidget(parent), m_theme(Theme::of(Theme::Mode::light)) {
    setObjectName(QStringLiteral("eye"));
    setAccessibleName(tr("What the eye sees of each lamp"));
    setWhatsThis(tr("Each lamp as a viewer sees it: rate, length of the flash, brightness, and uses that "
                    "have rules about the "
                    "rate."));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setAlternatingRowColors(true);
    verticalHeader()->hide();
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    rowsByContents(*this);
}

void EyeView::setEye(const std::vector<EyeReading>& lamps) {
    m_lamps = lamps;
    fill();
}

void EyeView::setTheme(const Theme& theme) {
    m_theme = theme;
    fill();
}

void EyeView::addHeading(const QString& text) {
    addRow(text, {}, QStringList(static_cast<int>(m_lamps.size())));
    QTableWidgetItem* made = item(rowCount() - 1, 0);
    QFont strong = made->font();
    strong.setBold(true);
    made->setFont(strong);
    setSpan(rowCount() - 1, 0, 1, columnCount());
}

void EyeView::addRow(const QString& name, const QString& meaning, const QStringList& cells) {
    const int row = rowCount();
    insertRow(row);
    QStringList texts{name};
    texts += cells;
    for (int column = 0; column < texts.size(); ++column) {
        auto* made = new QTableWidgetItem(texts[column].isNull() && column > 0 ? noValue : texts[column]);
        made->setToolTip(meaning);
        setItem(row, column, made);
    }
}

void EyeView::fill() {
    clear();
    setRowCount(0);
    setColumnCount(static_cast<int>(m_lamps.size()) + 1);
    if (m_lamps.empty()) return;
    QStringList heads{tr("Figure")};
    for (const EyeReading& lamp : m_lamps) heads << QString::fromStdString(lamp.ref);
    setHorizontalHeaderLabels(heads);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);

    const auto each = [&](auto text) {
        QStringList cells;
        for (const EyeReading& lamp : m_lamps) cells << text(lamp);
        return cells;
    };
    addRow(tr("Looks like"),
           tr("Flashes are seen one by one up to about 10 a second and run together above about 60"),
           each([](const EyeReading& e) { return sentenceCase(said(name(e.look))); }));
    addRow(tr("Flashes a minute"), tr("Cycles of the output in a minute"),
           each([](const EyeReading& e) { return numberText(60 * e.rate_Hz); }));
    addRow(tr("Visible flash"), tr("Time in a cycle with more than 5 % of the rated current"),
           each([](const EyeReading& e) { return secondsText(e.flash_s); }));
    addRow(tr("Rhythm of marine lights"),
           tr("Class and its abbreviation on charts, after IALA R0110 and IHO Chart No. 1; of a single lamp"),
           each([](const EyeReading& e) { return sentenceCase(rhythmText(e.rhythm)); }));
    addRow(tr("Mean brightness, of rated"),
           tr("Mean current over the rated one. Above fusion this is the brightness that is seen "
              "(Talbot and Plateau)"),
           each([](const EyeReading& e) { return shareText(e.meanOfRated); }));
    addRow(tr("Effective intensity, of the peak"),
           tr("Steady light that is just seen from as far as these flashes, by Blondel and Rey with 0.2 s: a "
              "notion for the threshold of seeing by night, not the brightness of a lamp on a bench"),
           each([](const EyeReading& e) {
               return e.effectiveOfPeak ? shareText(*e.effectiveOfPeak) : QString();
           }));
    const bool stated = std::any_of(m_lamps.begin(), m_lamps.end(),
                                    [](const EyeReading& e) { return e.effective_cd.has_value(); });
    if (stated)
        addRow(tr("Effective intensity"), tr("The same, from the lamp's stated luminous intensity"),
               each([](const EyeReading& e) {
                   return e.effective_cd ? quantityText(*e.effective_cd, units::Unit::candela) : QString();
               }));

    addHeading(tr("The rate held against stated uses: check your local rules"));
    for (std::size_t k = 0; k < study::lightUses().size(); ++k) {
        const study::LightUse& use = study::lightUses()[k];
        addRow(sentenceCase(said(use.name)), tr("%1\nSource: %2").arg(rangeText(use), said(use.source)),
               each([&](const EyeReading& e) {
                   return k < e.uses.size() ? sentenceCase(said(name(e.uses[k]))) : QString();
               }));
    }
}

QString EyeView::asText() const {
    QStringList heads;
    for (int column = 0; column < columnCount(); ++column)
        if (const QTableWidgetItem* head = horizontalHeaderItem(column)) heads << head->text();
    QString text = heads.join(u'\t') + u'\n';
    for (int row = 0; row < rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < columnCount(); ++column) cells << item(row, column)->text();
        text += cells.join(u'\t') + u'\n';
    }
    return text;
}

QString eyeCautions(const std::vector<EyeReading>& lamps) {
    QStringList flickering;
    for (const EyeReading& lamp : lamps)
        if (lamp.flickers) flickering << QString::fromStdString(lamp.ref);
    QStringList sentences;
    if (!flickering.isEmpty())
        sentences << EyeView::tr(
                         "%1: more than three flashes a second can set off seizures in some people, most "
                         "often between 15 and 25 a second. Some permitted uses flash faster than that.")
                         .arg(flickering.join(QStringLiteral(", ")));
    sentences << EyeView::tr(
        "Do not look into strong lamps from close by. What a light may be used for, and at "
        "which rate, is for local rules and licensed people to say.");
    return sentences.join(u' ');
}

} // namespace blinkwright::widgets
