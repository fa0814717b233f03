#include "app/measure/record_import_dialog.h"

#include "app/help/help_pages.h"
#include "core/base/wording.h"
#include "core/units/engineering.h"
#include "widgets/measure/layout_form.h"
#include "widgets/measure/record_figures_table.h"
#include "widgets/measure/record_plot.h"
#include "widgets/measure/record_preview.h"
#include "widgets/rooms/quantity_field.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/text_sized.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace blinkwright::app {

namespace {

constexpr QSize firstSize(1060, 720);
constexpr int progressWidth = 140, progressSteps = 1000, progressEvery_ms = 60;
constexpr double worstTimeBase = 0.1; ///< relative: beyond it a record says nothing of times

QString accuracyText(double relative) {
    return RecordImportDialog::tr("%1 %").arg(widgets::plainNumber(100 * relative, 'g', 6));
}

QWidget* titled(const QString& title, QWidget* body) {
    auto* whole = new QWidget;
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    auto* head = new QLabel(title);
    QFont bold = head->font();
    bold.setBold(true);
    head->setFont(bold);
    column->addWidget(head);
    column->addWidget(body, 1);
    return whole;
}

} // namespace

RecordImportDialog::RecordImportDialog(const QString& path, const widgets::Theme& theme, QWidget* parent)
    : QDialog(parent), m_reader(path), m_preview(new widgets::RecordPreview), m_form(new widgets::LayoutForm),
      m_plot(new widgets::RecordPlot(widgets::RoomPlot::Use::screen)),
      m_figures(new widgets::RecordFiguresTable), m_said(new QPlainTextEdit),
      m_title(new QLineEdit(QFileInfo(path).completeBaseName())),
      m_powerOn(
          new QCheckBox(tr("It begins with &power-on: the first flash is the one from an empty capacitor"))),
      m_accuracy(new widgets::QuantityField), m_message(new QLabel), m_progress(new QProgressBar) {
    setObjectName(QStringLiteral("import record"));
    help::setPage(this, QStringLiteral("import"));
    setWindowTitle(tr("Import a record – %1").arg(QFileInfo(path).fileName()));
    makeLayout();
    setTheme(theme);
    resize(widgets::withText(*this, firstSize));

    connect(&m_reader, &RecordReader::begun, this, &RecordImportDialog::begun);
    connect(&m_reader, &RecordReader::finished, this, &RecordImportDialog::finished);
    connect(&m_reader, &RecordReader::failed, this, &RecordImportDialog::failed);
    connect(&m_reader, &RecordReader::busyChanged, this, &RecordImportDialog::showBusy);
    connect(m_form, &widgets::LayoutForm::changed, this, &RecordImportDialog::readAgain);
    connect(m_form, &widgets::LayoutForm::tableChanged, this, &RecordImportDialog::tableChanged);
    connect(m_form, &widgets::LayoutForm::refused, this, [this](const QString& why) { say(why, true); });
    connect(m_powerOn, &QCheckBox::clicked, this, [this](bool on) {
        m_fromPowerOn = on;
        readAgain();
    });
    connect(m_accuracy, &widgets::QuantityField::refused, this,
            [this](const QString& why) { say(why, true); });
    connect(m_accuracy, &widgets::QuantityField::entered, this, [this](double relative) {
        m_timeUncertainty = relative;
        m_accuracy->showText(accuracyText(relative));
        readAgain();
    });
    m_progressTimer.setInterval(progressEvery_ms);
    connect(&m_progressTimer, &QTimer::timeout, this, [this] {
        const double share = m_reader.progress();
        m_progress->setRange(0, share < 0 ? 0 : progressSteps);
        if (share >= 0) m_progress->setValue(static_cast<int>(share * progressSteps));
    });
    m_reader.begin();
}

RecordImportDialog::~RecordImportDialog() {
    m_reader.cancel();
}

void RecordImportDialog::makeLayout() {
    m_said->setObjectName(QStringLiteral("said"));
    m_said->setAccessibleName(tr("What was taken for what"));
    m_said->setReadOnly(true);
    m_said->setTabChangesFocus(true);
    m_said->setWhatsThis(
        tr("How the file was read: columns, levels and switchings that were found. Mend above what is "
           "wrong in it."));
    m_title->setObjectName(QStringLiteral("title"));
    m_title->setWhatsThis(tr("Name of the record in Measurements and beside its curve."));
    m_powerOn->setObjectName(QStringLiteral("power-on"));
    m_powerOn->setWhatsThis(
        tr("Tick it if recording began when the supply was switched on. The first flash then "
           "counts as the longer one that it is, and not as a settled one."));
    m_accuracy->setObjectName(QStringLiteral("accuracy"));
    m_accuracy->setWhatsThis(
        tr("How well the instrument keeps time, relative, from 0 to 10 %. It goes into the "
           "uncertainty of every time of the record."));
    m_accuracy->setToolTip(
        tr("Standard uncertainty of the instrument's time base: 0.01 %, 50e-6. Its data sheet says it."));
    m_accuracy->setReader([](const QString& text) -> Result<double> {
        Result<double> relative = units::parseQuantity(text.toStdString(), units::Unit::none);
        if (relative && (relative.value() < 0 || relative.value() > worstTimeBase))
            return Fault{"", wording::inWords("the time base's uncertainty must be from 0 to 10 %")};
        return relative;
    });
    m_accuracy->showText(accuracyText(m_timeUncertainty));
    m_message->setObjectName(QStringLiteral("message"));
    m_message->setTextFormat(Qt::PlainText);
    m_message->setWordWrap(true);
    widgets::sizedByText(*m_message,
                         [this] { m_message->setMinimumHeight(2 * m_message->fontMetrics().lineSpacing()); });
    m_message->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_progress->setObjectName(QStringLiteral("progress"));
    m_progress->setAccessibleName(tr("Progress"));
    m_progress->setFixedWidth(progressWidth);
    m_progress->setTextVisible(false);

    auto* left = new QVBoxLayout;
    left->addWidget(titled(tr("The file's first lines"), m_preview), 1);
    left->addWidget(titled(tr("What stands where"), m_form));
    left->addWidget(titled(tr("What was taken for what"), m_said), 1);
    auto* right = new QVBoxLayout;
    right->addWidget(titled(tr("The record"), m_plot), 1);
    right->addWidget(m_figures);
    auto* halves = new QHBoxLayout;
    halves->setSpacing(14);
    halves->addLayout(left, 1);
    halves->addLayout(right, 1);

    auto* names = new QGridLayout;
    auto* title = new QLabel(tr("T&itle"));
    title->setBuddy(m_title);
    auto* accuracy = new QLabel(tr("Uncertaint&y of its time base"));
    accuracy->setBuddy(m_accuracy);
    names->addWidget(title, 0, 0);
    names->addWidget(m_title, 0, 1);
    names->addWidget(accuracy, 0, 2);
    names->addWidget(m_accuracy, 0, 3);
    names->addWidget(m_powerOn, 1, 1, 1, 3);
    names->setColumnStretch(1, 1);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_import = buttons->addButton(tr("I&mport"), QDialogButtonBox::AcceptRole);
    m_import->setObjectName(QStringLiteral("import"));
    m_import->setWhatsThis(tr("Adds the record to the measurements of the circuit, in one step."));
    m_import->setEnabled(false);
    m_stop = new QPushButton(tr("&Stop reading"));
    m_stop->setObjectName(QStringLiteral("stop"));
    m_stop->setWhatsThis(tr("Stops reading the file. The next change of a setting reads it again."));
    m_stop->setAutoDefault(false);
    for (QWidget* part : std::initializer_list<QWidget*>{m_progress, m_stop}) {
        QSizePolicy policy = part->sizePolicy();
        policy.setRetainSizeWhenHidden(true); // nothing jumps when reading begins
        part->setSizePolicy(policy);
        part->hide();
    }
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_stop, &QPushButton::clicked, this, [this] {
        m_reader.cancel();
        clearReading();
        say(tr("Reading was stopped. The next change of a setting reads the file again."), false);
        emit settled();
    });
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_progress);
    foot->addWidget(m_stop);
    foot->addStretch(1);
    foot->addWidget(buttons);
    auto* whole = new QVBoxLayout(this);
    whole->addLayout(halves, 1);
    whole->addLayout(names);
    whole->addWidget(m_message);
    whole->addLayout(foot);
}

void RecordImportDialog::begun(const RecordReader::Beginning& beginning) {
    m_beginning = beginning.text;
    m_preview->setText(beginning.text);
    if (beginning.layout) {
        m_form->setRecordLayout(beginning.layout.value());
        m_preview->setRecordLayout(beginning.layout.value());
        return readAgain();
    }
    // What cannot be guessed can still be told.
    io::RecordLayout blank;
    blank.voltages = {{1, 1, circuit::TraceOf::output, false}};
    m_form->setRecordLayout(blank);
    tableChanged();
    m_reader.cancel();
    failed({"", wording::inWords("%1. Say below what stands where.", beginning.layout.fault().message())});
}

void RecordImportDialog::tableChanged() {
    io::RecordLayout layout = m_form->recordLayout();
    const std::size_t header = layout.preambleLines;
    const auto rows = io::firstRows(m_beginning, layout.separator, header + layout.headerLines + 1);
    std::size_t columns = 1;
    if (!rows.empty()) columns = std::max(columns, rows.back().size());
    layout.columns.assign(columns, {});
    for (std::size_t r = header; r < std::min(header + layout.headerLines, rows.size()); ++r)
        for (std::size_t c = 0; c < std::min(columns, rows[r].size()); ++c)
            layout.columns[c] += (layout.columns[c].empty() || rows[r][c].empty() ? "" : " ") + rows[r][c];
    if (layout.timeColumn && *layout.timeColumn >= columns) layout.timeColumn = 0;
    std::erase_if(layout.voltages,
                  [&](const io::VoltageColumn& voltage) { return voltage.column >= columns; });
    if (layout.voltages.empty()) layout.voltages = {{columns - 1, 1, circuit::TraceOf::output, false}};
    m_form->setRecordLayout(layout);
    readAgain();
}

void RecordImportDialog::readAgain() {
    const io::RecordLayout& layout = m_form->recordLayout();
    m_preview->setRecordLayout(layout);
    m_import->setEnabled(false);
    say(tr("Reading…"), false);
    m_reader.read(layout, {.fromPowerOn = m_fromPowerOn, .timeUncertainty = m_timeUncertainty});
}

void RecordImportDialog::finished(const RecordReader::Reading& reading) {
    m_record = reading.record;
    // What the shapes said goes into the controls, without making it the user's word.
    io::RecordLayout layout = m_form->recordLayout();
    for (std::size_t k = 0; k < std::min(layout.voltages.size(), m_record->traces.size()); ++k)
        if (!layout.voltages[k].named) layout.voltages[k].of = m_record->traces[k].of;
    m_form->setRecordLayout(layout);
    m_preview->setRecordLayout(layout);
    m_plot->setRecord(m_record);
    m_figures->setFigures(reading.figures);
    m_powerOn->setChecked(m_record->fromPowerOn);
    QString said;
    for (const auto& sentences : {io::saidOf(layout), reading.said})
        for (const std::string& sentence : sentences)
            said += (said.isEmpty() ? QString() : QStringLiteral("\n")) + QString::fromStdString(sentence);
    m_said->setPlainText(said);
    m_import->setEnabled(true);
    const auto count = m_record->switchings_s.size();
    QString words = tr("%1 switchings, %2 whole cycles.").arg(count).arg(reading.figures.cycles);
    if (reading.figures.cycles == 0)
        words += u' ' + tr("For a cycle time the record must hold two rises of the output.");
    m_plot->setSummary(words);
    say(words, false);
    emit settled();
}

void RecordImportDialog::failed(const Fault& fault) {
    clearReading();
    say(tr("It cannot be read so: %1").arg(QString::fromStdString(fault.message())), true);
    emit settled();
}

void RecordImportDialog::clearReading() {
    m_record.reset();
    m_import->setEnabled(false);
    m_plot->setRecord(nullptr);
    m_plot->setMessage(tr("Nothing is read yet."));
    m_figures->setFigures({});
    QString said;
    for (const std::string& sentence : io::saidOf(m_form->recordLayout()))
        said += (said.isEmpty() ? QString() : QStringLiteral("\n")) + QString::fromStdString(sentence);
    m_said->setPlainText(said);
}

void RecordImportDialog::showBusy(bool busy) {
    m_progress->setVisible(busy);
    m_stop->setVisible(busy);
    if (busy)
        m_progressTimer.start();
    else
        m_progressTimer.stop();
}

QString RecordImportDialog::message() const {
    return m_message->text();
}

void RecordImportDialog::say(const QString& sentence, bool isFault) {
    m_isFault = isFault;
    m_message->setText(sentence);
    QPalette palette = m_message->palette();
    palette.setColor(QPalette::WindowText, isFault ? m_theme.fault : m_theme.ink);
    m_message->setPalette(palette);
}

void RecordImportDialog::setTheme(const widgets::Theme& theme) {
    m_theme = theme;
    m_preview->setTheme(theme);
    m_plot->setTheme(theme);
    say(m_message->text(), m_isFault);
}

void RecordImportDialog::reject() {
    if (m_reader.isBusy()) return m_stop->click();
    QDialog::reject();
}

std::optional<circuit::Measurement> RecordImportDialog::measurement() const {
    if (!m_record) return {};
    circuit::Measurement measurement;
    measurement.title = m_title->text().trimmed().toStdString();
    measurement.what = *m_record;
    return measurement;
}

std::optional<circuit::Measurement> RecordImportDialog::ask(QWidget* parent, const QString& path,
                                                            const widgets::Theme& theme) {
    RecordImportDialog dialog(path, theme, parent);
    if (dialog.exec() != Accepted) return {};
    return dialog.measurement();
}

} // namespace blinkwright::app
