#include "app/save_question.h"

#include "app/whole_file.h"
#include "core/base/wording.h"
#include "widgets/text/words.h"

#include <QFileDialog>
#include <QFileInfo>

namespace blinkwright::app {

using widgets::Words;

namespace {

const QString tableEnding = QStringLiteral("csv");
constexpr char answersName[] = "tables", commaAnswer[] = "comma";

struct Offer {
    QString filter, ending;
    io::CsvStyle style = {};
};

std::vector<Offer> offersOf(const SaveQuestion& question, const io::CsvStyle& style) {
    std::vector<Offer> all;
    const auto add = [&](const QString& words, const QString& ending, const io::CsvStyle& numbers) {
        all.push_back({QStringLiteral("%1 (*.%2)").arg(words, ending), ending, numbers});
    };
    for (const auto& [words, ending] : question.kinds) {
        if (ending != tableEnding) {
            add(words, ending, style);
            continue;
        }
        const bool commaFirst = style == io::commaCsv;
        for (const bool comma : {commaFirst, !commaFirst})
            add(comma ? Words::tr("%1, decimal comma").arg(words) : Words::tr("%1, decimal point").arg(words),
                ending, comma ? io::commaCsv : io::pointCsv);
    }
    return all;
}

} // namespace

io::CsvStyle tableStyle(const Settings& settings) {
    const QVariant comma = settings.answers(QLatin1String(answersName)).value(QLatin1String(commaAnswer));
    const bool isComma = comma.isValid() ? comma.toBool() : wording::decimalSign() == ',';
    return isComma ? io::commaCsv : io::pointCsv;
}

void setTableStyle(Settings& settings, const io::CsvStyle& style) {
    settings.setAnswers(QLatin1String(answersName), {{QLatin1String(commaAnswer), style == io::commaCsv}});
}

Result<void> writeTable(const QString& path, const std::string& csv, const Settings& settings) {
    return writeWhole(path, QByteArray::fromStdString(io::inStyle(csv, tableStyle(settings))));
}

QStringList filtersOf(const SaveQuestion& question, const io::CsvStyle& style) {
    QStringList all;
    for (const Offer& offer : offersOf(question, style)) all << offer.filter;
    return all;
}

QString askWhere(QWidget* over, const SaveQuestion& question, Settings& settings) {
    const std::vector<Offer> offers = offersOf(question, tableStyle(settings));
    QFileDialog dialog(over, question.title, settings.lastFolder());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    if (!question.button.isEmpty()) dialog.setLabelText(QFileDialog::Accept, question.button);
    dialog.setNameFilters(filtersOf(question, tableStyle(settings)));
    const auto offered = [&](auto is) { return std::find_if(offers.begin(), offers.end(), is); };
    auto first = offered([&](const Offer& offer) { return offer.ending == question.ending; });
    if (first == offers.end()) first = offers.begin();
    dialog.selectNameFilter(first->filter);
    dialog.setDefaultSuffix(first->ending);
    dialog.selectFile(question.name);
    const auto chosen = [&](const QString& filter) {
        return offered([&](const Offer& offer) { return offer.filter == filter; });
    };
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&](const QString& filter) {
        if (const auto offer = chosen(filter); offer != offers.end()) dialog.setDefaultSuffix(offer->ending);
    });
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return {};
    QString path = dialog.selectedFiles().front();
    settings.setLastFolder(QFileInfo(path).absolutePath());
    if (const auto offer = chosen(dialog.selectedNameFilter());
        offer != offers.end() && offer->ending == tableEnding &&
        QFileInfo(path).suffix().toLower() == tableEnding)
        setTableStyle(settings, offer->style);
    return path;
}

} // namespace blinkwright::app
