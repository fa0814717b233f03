// Reads and reduces the record in a file on a thread of its own, again after each change of layout or
// options; the newest wish wins.
//
//   RecordReader reader(path);
//   connect(&reader, &RecordReader::begun, ...);     // the beginning of the file and the layout as guessed
//   connect(&reader, &RecordReader::finished, ...);  // what was made of it; or failed(), with the reason
//   reader.begin();   reader.read(layout, options);
#pragma once

#include "app/newest_task.h"
#include "core/io/record_file.h"
#include "core/study/measured_readings.h"
#include "core/study/record_reduction.h"

#include <QString>
#include <memory>
#include <optional>

namespace blinkwright::app {

class RecordReader : public QObject {
    Q_OBJECT
  public:
    struct Beginning {
        std::string text; ///< the first bytes
        Result<io::RecordLayout> layout = Fault{};
    };
    struct Reading {
        std::shared_ptr<const circuit::Record> record;
        study::Reduction reduction; ///< without its record
        study::RecordFigures figures;
        std::vector<std::string> said;
    };

    explicit RecordReader(const QString& path, QObject* parent = nullptr);
    ~RecordReader() override;

    /// Looks at the beginning of the file and guesses its layout.
    void begin();
    void read(const io::RecordLayout& layout, const study::ReductionOptions& options);
    void cancel() { m_task.cancel(); }
    bool isBusy() const { return m_task.isBusy(); }
    double progress() const {
        return m_progress ? m_progress->load() : -1;
    } ///< 0 to 1; below 0 where nobody knows

  signals:
    void begun(const blinkwright::app::RecordReader::Beginning& beginning);
    void finished(const blinkwright::app::RecordReader::Reading& reading);
    void failed(const blinkwright::Fault& fault);
    void busyChanged(bool busy);

  private:
    using Raw = std::shared_ptr<const study::RawRecord>;
    const std::string m_path;
    io::RecordLayout m_layout; ///< that m_raw was read by
    Raw m_raw;                 ///< kept, so that options alone need no reading
    std::shared_ptr<std::atomic<double>> m_progress;
    NewestTask m_task;
};

} // namespace blinkwright::app
