#include "widgets/rooms/suspects_view.h"

#include "core/study/symptom_words.h"
#include "widgets/rooms/share_bar.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/text_sized.h"

#include <QHeaderView>
#include <QLabel>
#include <QRegularExpression>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

enum SuspectColumn { chanceColumn, faultColumn, suspectColumns };
constexpr int shareWidth = 116, faultLeast = 230, mostRows = 25, rowGap = 8;
constexpr double leastShare = 0.001; ///< less is not shown, but for the first few
constexpr int alwaysShown = 3;

QString qs(const std::string& text) {
    return QString::fromStdString(text);
}
/// With true minus signs before numbers; words keep their hyphens.
QString shown(const std::string& text) {
    static const QRegularExpression minus(QStringLiteral("(?<!\\w)-(?=\\d)"));
    return qs(text).replace(minus, QString(minusSign));
}
QString percentText(double share) {
    const QString number =
        share < 0.001 ? QStringLiteral("< ") + plainNumber(0.1, 'f', 1) : plainNumber(100 * share, 'f', 1);
    return number + QStringLiteral("\u00A0%");
}
QLabel* wrapped(const char* name) {
    auto* label = new QLabel;
    label->setObjectName(QLatin1String(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    return label;
}

} // namespace

SuspectsView::SuspectsView(QWidget* parent)
    : QWidget(parent), m_table(new QTableWidget(0, suspectColumns)), m_next(wrapped("next")),
      m_chosen(wrapped("chosen")), m_limits(wrapped("limits")), m_bar(new ShareBar(m_table)) {
    m_table->setObjectName(QStringLiteral("suspects"));
    m_table->setAccessibleName(tr("Likely faults, the likeliest first"));
    m_table->setWhatsThis(
        tr("Faults that would explain what was seen and measured, with their share of the likelihood. The "
           "chosen one is shown on the Hook-up; what to look at is said below."));
    m_table->setHorizontalHeaderLabels({tr("Share"), tr("Likely wrong")});
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSectionResizeMode(chanceColumn, QHeaderView::Fixed);
    sizedByText(*m_table, [this] {
        m_table->setColumnWidth(chanceColumn, withText(*m_table, shareWidth));
        // Sentences wrap, so large texts need not all the width: the form is beside it, and a screen has an
        // end.
        m_table->setMinimumWidth(withText(*m_table, shareWidth) +
                                 std::max(faultLeast, withText(*m_table, faultLeast) * 3 / 4));
        fitRows();
    });
    m_table->horizontalHeader()->setSectionResizeMode(faultColumn, QHeaderView::Stretch);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->setItemDelegateForColumn(chanceColumn, m_bar);
    connect(m_table->horizontalHeader(), &QHeaderView::sectionResized, this, [this](int section) {
        if (section == faultColumn) fitRows();
    });
    connect(m_table, &QTableWidget::currentCellChanged, this, [this](int row, int, int before, int) {
        if (row == before) return;
        showChosen();
        const auto at = static_cast<std::size_t>(row);
        if (row < 0 || !m_library || at >= m_diagnosis.suspects.size()) return;
        const auto& places = m_library->faults[m_diagnosis.suspects[at].faults.front()].places;
        if (!places.empty()) emit placeActivated(qs(places.front()));
    });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_next);
    column->addWidget(m_table, 1);
    column->addWidget(m_chosen);
    column->addWidget(m_limits);
    m_limits->setText(qs(study::searchLimits()));
}

SuspectsView::~SuspectsView() {
    m_table->disconnect(this); // it goes after this, and its header may still be laid out
    m_table->horizontalHeader()->disconnect(this);
}

void SuspectsView::setDiagnosis(std::shared_ptr<const study::FaultLibrary> library,
                                study::Diagnosis diagnosis) {
    m_library = std::move(library);
    m_diagnosis = std::move(diagnosis);
    fill();
}

void SuspectsView::clear() {
    setDiagnosis(nullptr, {});
}

void SuspectsView::fill() {
    const QSignalBlocker quiet(m_table);
    m_table->setRowCount(0);
    if (m_library)
        for (const study::Suspect& suspect : m_diagnosis.suspects) {
            const int row = m_table->rowCount();
            if (row >= mostRows || (row >= alwaysShown && suspect.share < leastShare)) break;
            m_table->insertRow(row);
            auto* share = new QTableWidgetItem(percentText(suspect.share));
            share->setData(Qt::UserRole, suspect.share);
            share->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            m_table->setItem(row, chanceColumn, share);
            QString text = qs(m_library->faults[suspect.faults.front()].sentence);
            if (suspect.faults.size() > 1) {
                study::Suspect others = suspect;
                others.faults.erase(others.faults.begin());
                text += u'\n' + tr("The same from outside: %1.").arg(qs(labelOf(*m_library, others)));
            }
            auto* fault = new QTableWidgetItem(text);
            fault->setToolTip(text);
            m_table->setItem(row, faultColumn, fault);
        }
    m_next->setText(m_library ? shown(nextWords(*m_library, m_diagnosis)) : QString());
    m_next->setVisible(!m_next->text().isEmpty());
    m_limits->setVisible(m_library != nullptr);
    fitRows();
    if (m_table->rowCount() > 0) m_table->setCurrentCell(0, faultColumn);
    showChosen();
}

void SuspectsView::showChosen() {
    const auto at = static_cast<std::size_t>(std::max(0, m_table->currentRow()));
    QString text;
    if (m_library && at < m_diagnosis.suspects.size()) {
        const study::Suspect& suspect = m_diagnosis.suspects[at];
        text = tr("What to do: %1").arg(qs(m_library->faults[suspect.faults.front()].remedy));
        if (const std::string tell = tellWords(*m_library, suspect); !tell.empty())
            text += u'\n' + shown(tell);
    }
    m_chosen->setText(text);
    m_chosen->setVisible(!text.isEmpty());
}

void SuspectsView::fitRows() {
    for (int row = 0; row < m_table->rowCount(); ++row) {
        m_table->resizeRowToContents(row);
        m_table->setRowHeight(row, m_table->rowHeight(row) + rowGap);
    }
}

QString SuspectsView::asText() const {
    return m_library ? qs(symptomsText(*m_library, m_diagnosis)) : QString();
}

void SuspectsView::setTheme(const Theme& theme) {
    m_bar->setColour(theme.accent);
    QPalette quiet = m_limits->palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    m_limits->setPalette(quiet);
    m_table->viewport()->update();
}

} // namespace blinkwright::widgets
