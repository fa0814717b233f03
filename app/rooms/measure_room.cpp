#include "app/rooms/measure_room.h"

#include "core/study/measured_against.h"
#include "widgets/measure/measurement_words.h"
#include "widgets/measure/measurements_view.h"
#include "widgets/measure/meter_dialog.h"
#include "widgets/measure/stopwatch_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QPushButton>
#include <QShortcut>

#include <algorithm>

namespace blinkwright::app {

namespace {

/// What the worker finds out.
struct Answer {
    study::MeasuredReadings readings;
    std::vector<study::MeasuredAgainst> figures;
    QString fault;
};

Answer answerFor(const circuit::Circuit& circuit, circuit::PartSet set, const std::atomic<bool>& cancel) {
    Answer answer{study::measuredReadings(circuit), {}, {}};
    const Result<study::Study> studied =
        study::study(circuit, set, {.begin = circuit::Begin::powerOn, .cancel = &cancel});
    if (!studied) answer.fault = QString::fromStdString(studied.fault().message());
    answer.figures =
        study::measuredAgainst(circuit, set, answer.readings, studied ? &studied.value() : nullptr);
    return answer;
}

} // namespace

MeasureRoom::MeasureRoom(const House& house, ImportRecord import)
    : Room(house, tr("Measurements"), QStringLiteral("measure"), QSize(860, 560)),
      m_import(std::move(import)), m_view(new widgets::MeasurementsView) {
    makeControls();
    frame().setBody(m_view);
    m_copy = frame().addButton(tr("Co&py"));
    m_copy->setWhatsThis(tr("Puts the measurements and what they say on the clipboard as text."));
    connect(m_copy, &QPushButton::clicked, this, [this] {
        QApplication::clipboard()->setText(m_view->asText());
        this->house().say(tr("The measurements are on the clipboard."));
    });
    connect(&m_view->model(), &widgets::MeasurementModel::wished, this, &MeasureRoom::apply);
    connect(&m_view->model(), &widgets::MeasurementModel::refused, this,
            [this](const QString& why) { answer(why, true); });
    connect(m_view, &widgets::MeasurementsView::changeWished, this, &MeasureRoom::change);
    connect(m_view, &widgets::MeasurementsView::chosenChanged, this, &MeasureRoom::showAvailability);
    // The list follows at once, what it says when the worker has found it.
    connect(&house.document, &Document::changed, this, [this] {
        m_view->setCircuit(circuit());
        showAvailability();
    });
    m_view->setCircuit(circuit());
    makeKeys();
    showAvailability();
    ready();
}

void MeasureRoom::makeControls() {
    const auto add = [this](const QString& text, const char* objectName, const QString& meaning, auto done) {
        auto* button = new QPushButton(text);
        button->setWhatsThis(meaning);
        button->setObjectName(QLatin1String(objectName));
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, done);
        frame().addControl({}, button);
        return button;
    };
    m_count = add(tr("&Stopwatch…"), "addCount",
                  tr("Enters how long a number of flashes takes: typed, or tapped along with the lamp."),
                  [this] { addCount(); });
    m_reading =
        add(tr("&Meter reading…"), "addReading",
            tr("Enters what a meter shows: supply voltage, output, lamp current, or a part by itself."),
            [this] { addReading(); });
    m_record = add(tr("&Import a record…"), "addRecord",
                   tr("Reads voltages over time from an instrument's table (.csv, .txt, .tsv, .dat)."),
                   [this] { addRecord(); });
    m_record->setVisible(m_import != nullptr);
    m_change =
        add(tr("C&hange…"), "change", tr("Opens the chosen measurement in the form that it was entered in."),
            [this] { m_view->changeChosen(); });
    m_duplicate = add(tr("D&uplicate"), "duplicate",
                      tr("Adds the chosen measurement once more, as a start for a similar one."),
                      [this] { m_view->duplicateChosen(); });
    m_delete = add(tr("&Delete"), "delete",
                   tr("Takes the chosen measurements out of the circuit. Undo brings them back."),
                   [this] { m_view->removeChosen(); });
    m_change->setToolTip(tr("Change the chosen measurement in its form (Enter)"));
    m_duplicate->setToolTip(tr("Duplicate the chosen measurement (Ctrl+D)"));
    m_delete->setToolTip(tr("Delete the chosen measurements (Delete)"));
}

// The menus' keys belong to the main window.
void MeasureRoom::makeKeys() {
    QUndoStack& undo = house().document.undoStack();
    for (const auto& [keys, step] : {std::pair(QKeySequence(QKeySequence::Undo), &QUndoStack::undo),
                                     std::pair(QKeySequence(tr("Ctrl+Shift+Z")), &QUndoStack::redo),
                                     std::pair(QKeySequence(tr("Ctrl+Y")), &QUndoStack::redo)})
        connect(new QShortcut(keys, &frame()), &QShortcut::activated, &undo, step);
}

void MeasureRoom::showAvailability() {
    const bool open = !circuit().parts().empty(), any = !m_view->isEmpty();
    const bool chosen = any && m_view->chosen() >= 0;
    m_count->setEnabled(open);
    m_reading->setEnabled(open && widgets::MeterDialog::hasSubjects(circuit()));
    m_record->setEnabled(open);
    m_copy->setEnabled(any);
    m_delete->setEnabled(chosen);
    m_duplicate->setEnabled(chosen);
    const auto hasForm = [](const circuit::Measurement& m) {
        return std::holds_alternative<circuit::Count>(m.what) ||
               std::holds_alternative<circuit::MeterReading>(m.what);
    };
    m_change->setEnabled(chosen && hasForm(m_view->model().at(m_view->chosen())));
}

void MeasureRoom::apply(const circuit::Measurements& measurements, const QString& text) {
    const Result<void> done =
        house().document.apply({circuit::edits::SetMeasurements{measurements, text.toStdString()}});
    if (!done) return answer(QString::fromStdString(done.fault().message()), true);
    house().say(text);
}

/// @param row of the measurement that the form changes; -1 adds what it makes.
template <class Form>
void MeasureRoom::openForm(Form* form, int row) {
    form->setAttribute(Qt::WA_DeleteOnClose);
    // The list may change meanwhile: the form is for this measurement and no other.
    const auto of = row < 0 ? nullptr : circuit().measurements.at(static_cast<std::size_t>(row));
    if (of) form->setMeasurement(*of);
    connect(form, &QDialog::accepted, this, [this, form, of] {
        widgets::MeasurementModel& model = m_view->model();
        if (!of) return model.add(form->measurement());
        const auto& now = circuit().measurements;
        const auto at = std::ranges::find(now, of);
        if (at != now.end()) model.replace(static_cast<int>(at - now.begin()), form->measurement());
    });
    form->open();
}

void MeasureRoom::addCount() {
    openForm(new widgets::StopwatchDialog(&frame()), -1);
}

void MeasureRoom::addReading() {
    openForm(new widgets::MeterDialog(circuit(), &frame()), -1);
}

void MeasureRoom::addRecord() {
    if (!m_import) return;
    if (std::optional<circuit::Measurement> record = m_import(&frame()))
        m_view->model().add(std::move(*record));
}

void MeasureRoom::change(int row) {
    if (row < 0 || row >= m_view->model().rowCount()) return;
    const circuit::Measurement& m = m_view->model().at(row);
    if (std::holds_alternative<circuit::Count>(m.what))
        openForm(new widgets::StopwatchDialog(&frame()), row);
    else if (std::holds_alternative<circuit::MeterReading>(m.what))
        openForm(new widgets::MeterDialog(circuit(), &frame()), row);
    else
        answer(
            tr("A record is not changed by hand: title and use alone can be. Import it anew for the rest."));
}

void MeasureRoom::ask() {
    m_view->setCircuit(circuit());
    showAvailability();
    if (m_view->isEmpty()) {
        task().cancel();
        m_view->table().setFigures({}, circuit(), tr("Set A"));
        return answer(tr("Begin with the stopwatch: the flash rate is the easiest to measure."));
    }
    task().start(
        [this, circuit = circuit(), set = set()](const std::atomic<bool>& cancel) -> NewestTask::Answer {
            auto found = std::make_shared<const Answer>(answerFor(circuit, set, cancel));
            return [this, found, circuit, set] {
                m_view->table().setFigures(found->figures, circuit,
                                           set == circuit::PartSet::A ? tr("Set A") : tr("Set B"));
                const QString clash = widgets::clashText(found->readings, circuit);
                if (!clash.isEmpty()) return answer(clash, true);
                if (!found->fault.isEmpty()) return answer(found->fault, true);
                answer(widgets::agreementText(found->figures, circuit));
            };
        });
}

void MeasureRoom::clear() {
    m_view->setCircuit(circuit());
    m_view->table().setFigures({}, circuit(), tr("Set A"));
    showAvailability();
}

void MeasureRoom::showTheme(const widgets::Theme& theme) {
    m_view->setTheme(theme);
}

} // namespace blinkwright::app
