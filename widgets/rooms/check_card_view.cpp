#include "widgets/rooms/check_card_view.h"

#include "widgets/rooms/reading_shown.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/said.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

namespace blinkwright::widgets {

namespace {

enum Column { placeColumn, leastColumn, meanColumn, mostColumn, columns };

QString qs(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

CheckCardView::CheckCardView(QWidget* parent)
    : QWidget(parent), m_heading(new QLabel), m_notes(new QLabel), m_instrument(new QComboBox),
      m_table(new QTableWidget(0, columns)) {
    m_heading->setObjectName(QStringLiteral("cardHeading"));
    m_instrument->setObjectName(QStringLiteral("instrument"));
    m_instrument->setWhatsThis(tr("With what it is measured. An instrument loads the circuit by its own "
                                  "resistance, which changes some readings."));
    for (const study::Instrument& each : {study::dcMeter, study::tenToOneProbe})
        m_instrument->addItem(sentenceCase(said(each.words)));
    connect(m_instrument, &QComboBox::currentIndexChanged, this, &CheckCardView::fill);
    m_table->setObjectName(QStringLiteral("card"));
    m_table->setAccessibleName(tr("Expected readings"));
    m_table->setWhatsThis(
        tr("What the instrument shows at each place of a sound board, against 0 V, with the instrument's own "
           "load in the simulation."));
    m_table->setHorizontalHeaderLabels({tr("Place"), tr("Least"), tr("Mean"), tr("Most")});
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->verticalHeader()->hide();
    rowsByText(*m_table);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->horizontalHeaderItem(placeColumn)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (int column = leastColumn; column < columns; ++column)
        m_table->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_notes->setObjectName(QStringLiteral("cardNotes"));
    m_notes->setWordWrap(true);
    m_notes->setTextFormat(Qt::PlainText);
    auto* label = new QLabel(tr("Read &with:"));
    label->setBuddy(m_instrument);
    auto* above = new QHBoxLayout;
    above->addWidget(m_heading);
    above->addStretch(1);
    above->addWidget(label);
    above->addWidget(m_instrument);
    auto* column = new QVBoxLayout(this);
    column->addLayout(above);
    column->addWidget(m_table, 1);
    column->addWidget(m_notes);
}

void CheckCardView::setCard(study::ExpectedReadings expected) {
    m_expected = std::move(expected);
    QStringList notes;
    for (const std::string& note : study::checkCardNotes()) notes << qs(note);
    m_notes->setText(notes.join(u' '));
    m_heading->setText(qs(study::checkCardHeading(m_expected)));
    fill();
}

void CheckCardView::clear() {
    m_expected = {};
    m_notes->clear();
    m_heading->clear();
    fill();
}

void CheckCardView::fill() {
    m_table->setRowCount(static_cast<int>(m_expected.rows.size()));
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const study::ExpectedReading& each = m_expected.rows[static_cast<std::size_t>(row)];
        const study::Extent& extent = m_instrument->currentIndex() == 1 ? each.probe : each.meter;
        m_table->setItem(row, placeColumn, new QTableWidgetItem(qs(each.place.words)));
        int column = leastColumn;
        for (const double value : {extent.least, extent.mean, extent.most}) {
            auto* item = new QTableWidgetItem(readingShown(each.place, value));
            item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            m_table->setItem(row, column++, item);
        }
    }
}

void CheckCardView::setTheme(const Theme& theme) {
    QPalette quiet = m_notes->palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    m_notes->setPalette(quiet);
}

} // namespace blinkwright::widgets
