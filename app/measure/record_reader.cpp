#include "app/measure/record_reader.h"

namespace blinkwright::app {

namespace {

/// Whether two layouts read the same numbers: what a column is matters only where a word or the user says it.
bool readTheSame(io::RecordLayout a, io::RecordLayout b) {
    for (io::RecordLayout* layout : {&a, &b})
        for (io::VoltageColumn& voltage : layout->voltages)
            if (!voltage.named) voltage.of = circuit::TraceOf::output;
    return a == b;
}

} // namespace

RecordReader::RecordReader(const QString& path, QObject* parent) : QObject(parent), m_path(path.toStdString()) {
    connect(&m_task, &NewestTask::busyChanged, this, &RecordReader::busyChanged);
}

RecordReader::~RecordReader() = default;

void RecordReader::begin() {
    m_progress.reset();
    m_task.start([this, path = m_path](const std::atomic<bool>&) -> NewestTask::Answer {
        auto text = io::readBeginning(path);
        if (!text) return [this, fault = text.fault()] { emit failed(fault); };
        auto beginning = std::make_shared<Beginning>();
        beginning->layout = io::guessLayout(text.value());
        beginning->text = std::move(text).value();
        return [this, beginning] { emit begun(*beginning); };
    });
}

void RecordReader::read(const io::RecordLayout& layout, const study::ReductionOptions& options) {
    m_progress = std::make_shared<std::atomic<double>>(0);
    const Raw known = m_raw && readTheSame(layout, m_layout) ? m_raw : nullptr;
    m_task.start([this, path = m_path, known, layout, options,
                  progress = m_progress](const std::atomic<bool>& cancel) -> NewestTask::Answer {
        const auto refuse = [this](const Fault& fault) { return [this, fault] { emit failed(fault); }; };
        Raw raw = known;
        if (!raw) {
            auto fresh = io::readRawRecord(path, layout, {.progress = progress.get(), .cancel = &cancel});
            if (!fresh) return refuse(fresh.fault());
            raw = std::make_shared<const study::RawRecord>(std::move(fresh).value());
        }
        *progress = 1;
        study::ReductionOptions wanted = options;
        wanted.cancel = &cancel;
        auto reduced = study::reduceRecord(*raw, wanted);
        const auto keep = [this, raw, layout] {
            m_raw = raw;
            m_layout = layout;
        };
        if (!reduced)
            return [keep, refused = refuse(reduced.fault())] {
                keep();
                refused();
            };
        auto reading = std::make_shared<Reading>();
        reading->figures = study::figuresOf(reduced.value().record);
        reading->said = study::saidOf(reduced.value());
        reading->record = std::make_shared<const circuit::Record>(std::move(reduced.value().record));
        reading->reduction = std::move(reduced).value();
        return [this, keep, reading] {
            keep();
            emit finished(*reading);
        };
    });
}

} // namespace blinkwright::app
