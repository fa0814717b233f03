#include "app/export_dialog.h"

#include "app/help/help_pages.h"
#include "core/units/lengths.h"
#include "widgets/text/text_sized.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QEvent>
#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QSpinBox>
#include <cmath>

namespace blinkwright::app {

namespace {

constexpr QSize firstSize(980, 620), leastPreview(320, 260);
constexpr int pause_ms = 60;

} // namespace

ExportDialog::ExportDialog(QWidget* parent, const ExportChoice& choice, ExportedSets sets,
                           const QString& second, Picture picture)
    : QDialog(parent), m_picture(std::move(picture)) {
    setWindowTitle(tr("Export curves"));
    setObjectName(QStringLiteral("export curves"));
    help::setPage(this, QStringLiteral("export"));
    QWidget* controls = makeControls(second);
    m_preview = new QLabel;
    m_preview->setObjectName(QStringLiteral("preview"));
    m_preview->setAccessibleName(tr("Preview of the page"));
    m_preview->setAlignment(Qt::AlignCenter);
    m_preview->setMinimumSize(leastPreview);
    m_preview->setFrameShape(QFrame::StyledPanel);
    m_size = new QLabel;
    m_size->setAlignment(Qt::AlignCenter);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    const auto button = [&](const QString& text, const QString& meaning, auto signal) {
        QPushButton* made = buttons->addButton(text, QDialogButtonBox::ActionRole);
        made->setWhatsThis(meaning);
        connect(made, &QPushButton::clicked, this, signal);
        return made;
    };
    QPushButton* save = button(
        tr("&Save as…"),
        tr("Asks for a file and writes the page: picture, drawing, page or table of numbers, by the ending."),
        &ExportDialog::saveWished);
    save->setDefault(true);
    button(tr("Copy &picture"), tr("Puts the page as previewed on the clipboard, as a picture."),
           &ExportDialog::copyPictureWished);
    button(tr("Copy &numbers"),
           tr("Puts the points of the curves on the clipboard, as a table with SI units."),
           &ExportDialog::copyDataWished);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* right = new QVBoxLayout;
    right->addWidget(m_preview, 1);
    right->addWidget(m_size);
    auto* row = new QHBoxLayout;
    row->addWidget(controls);
    row->addLayout(right, 1);
    auto* column = new QVBoxLayout(this);
    column->addLayout(row, 1);
    column->addWidget(buttons);

    m_sets->setCurrentIndex(static_cast<int>(sets));
    for (std::size_t s = 0; s < widgets::stripCount; ++s) m_strips[s]->setChecked(choice.style.strips[s]);
    m_legend->setChecked(choice.style.legend);
    m_greys->setChecked(choice.style.greys);
    m_moment->setChecked(choice.moment);
    m_visible->setChecked(choice.visibleOnly);
    m_width->setValue(choice.width_mm);
    m_height->setValue(choice.height_mm);
    m_dpi->setValue(choice.dpi);
    m_font->setValue(choice.fontPoints);

    m_pause.setSingleShot(true);
    m_pause.setInterval(pause_ms);
    connect(&m_pause, &QTimer::timeout, this, &ExportDialog::showPreview);
    connect(this, &ExportDialog::changed, &m_pause, qOverload<>(&QTimer::start));
    const auto follow = [this](auto* control, auto signal) {
        connect(control, signal, this, &ExportDialog::changed);
    };
    for (QCheckBox* box : findChildren<QCheckBox*>()) follow(box, &QCheckBox::toggled);
    for (QDoubleSpinBox* box : findChildren<QDoubleSpinBox*>())
        follow(box, qOverload<double>(&QDoubleSpinBox::valueChanged));
    follow(m_dpi, qOverload<int>(&QSpinBox::valueChanged));
    follow(m_sets, &QComboBox::currentIndexChanged);
    m_preview->installEventFilter(this);
    resize(widgets::withText(*this, firstSize.boundedTo(screen()->availableSize())));
    save->setFocus();
    showPreview();
}

QWidget* ExportDialog::makeControls(const QString& second) {
    auto* controls = new QWidget;
    auto* column = new QVBoxLayout(controls);
    column->setContentsMargins(0, 0, 0, 0);

    auto* shown = new QGroupBox(tr("On the page"));
    auto* list = new QVBoxLayout(shown);
    m_sets = new QComboBox;
    m_sets->setObjectName(QStringLiteral("sets"));
    m_sets->setAccessibleName(tr("Which sets"));
    m_sets->setWhatsThis(tr("Which curves stand on the page, where Set A is compared with something."));
    m_sets->addItems({second.isEmpty() ? tr("Set A") : tr("Set A and %1").arg(second), tr("Set A alone"),
                      tr("%1 alone").arg(second)});
    m_sets->setVisible(!second.isEmpty());
    list->addWidget(m_sets);
    const auto check = [list](const QString& text, const char* name, const QString& meaning) {
        auto* box = new QCheckBox(text);
        box->setWhatsThis(meaning);
        box->setObjectName(QLatin1String(name));
        list->addWidget(box);
        return box;
    };
    m_strips[0] =
        check(tr("&Output, pin 3"), "output",
              tr("The voltage at the output of the timer over time. One strip at least stays on the page."));
    m_strips[1] = check(tr("&Timing capacitor"), "capacitor",
                        tr("The voltage of the timing capacitor between the two levels of the timer."));
    m_strips[2] = check(tr("Lamp &current"), "lamps",
                        tr("The current of each lamp over time; brightness goes with it."));
    // A page without any strip is no page: the last one stays.
    for (QCheckBox* strip : m_strips)
        connect(strip, &QCheckBox::clicked, this, [this, strip] {
            for (const QCheckBox* other : m_strips)
                if (other->isChecked()) return;
            strip->setChecked(true);
        });
    m_legend = check(tr("&Legend"), "legend", tr("Says beside the curves which is which."));
    m_moment = check(tr("&Values at the moment line"), "moment",
                     tr("Draws the moment line with the voltages and currents at it."));
    m_visible =
        check(tr("Only the ti&me that the window shows"), "visible",
              tr("Leaves out what lies outside of the zoomed part. Without it the page has the whole run."));
    m_greys = check(tr("In &greys, told apart by dashes"), "greys",
                    tr("Draws curves grey and dashed, for copiers and printers without colour."));
    m_greys->setToolTip(tr("For copiers and printers without colour"));
    column->addWidget(shown);

    auto* measures = new QGroupBox(tr("Size"));
    auto* form = new QFormLayout(measures);
    const auto number = [form](const QString& label, const char* name, double low, double high, double step,
                               int decimals, const QString& unit, const QString& meaning) {
        auto* box = new QDoubleSpinBox;
        box->setWhatsThis(meaning);
        box->setObjectName(QLatin1String(name));
        box->setRange(low, high);
        box->setSingleStep(step);
        box->setDecimals(decimals);
        box->setSuffix(QChar(QChar::Nbsp) + unit);
        form->addRow(label, box);
        return box;
    };
    m_width = number(tr("&Width"), "width", 40, 400, 5, 0, tr("mm"),
                     tr("Width of the page on paper, in millimetres."));
    m_height = number(tr("&Height"), "height", 40, 400, 5, 0, tr("mm"),
                      tr("Height of the page on paper, in millimetres, shared by its strips."));
    m_font = number(tr("&Font"), "font", 5, 24, 0.5, 1, tr("pt"),
                    tr("Size of the texts on paper, in points. Texts in a report are usually of 8 to 11."));
    m_dpi = new QSpinBox;
    m_dpi->setObjectName(QStringLiteral("dpi"));
    m_dpi->setRange(72, 1200);
    m_dpi->setSingleStep(50);
    m_dpi->setSuffix(QChar(QChar::Nbsp) + tr("dots an inch"));
    m_dpi->setToolTip(tr("Of pictures (.png); drawings and pages are sharp at any size"));
    m_dpi->setWhatsThis(
        tr("How finely a picture is drawn. More dots make a larger file; 300 are usual for print."));
    form->addRow(tr("&Resolution"), m_dpi);
    column->addWidget(measures);
    column->addStretch();
    return controls;
}

ExportChoice ExportDialog::choice() const {
    ExportChoice c;
    for (std::size_t s = 0; s < widgets::stripCount; ++s) c.style.strips[s] = m_strips[s]->isChecked();
    c.style.legend = m_legend->isChecked();
    c.style.greys = m_greys->isChecked();
    c.moment = m_moment->isChecked();
    c.visibleOnly = m_visible->isChecked();
    c.width_mm = m_width->value();
    c.height_mm = m_height->value();
    c.dpi = m_dpi->value();
    c.fontPoints = m_font->value();
    return c;
}

ExportedSets ExportDialog::sets() const {
    return static_cast<ExportedSets>(m_sets->currentIndex());
}

void ExportDialog::showPreview() {
    const ExportChoice now = choice();
    const QSize room = m_preview->contentsRect().size() - QSize(8, 8);
    const double ratio = devicePixelRatioF();
    const double fit = std::min(room.width() / now.width_mm, room.height() / now.height_mm);
    QImage image = m_picture(now, sets(), static_cast<int>(std::floor(fit * ratio * units::mmPerInch)));
    image.setDevicePixelRatio(ratio);
    m_preview->setPixmap(QPixmap::fromImage(image));
    const auto dots = [&](double mm) { return qRound(mm / units::mmPerInch * now.dpi); };
    m_size->setText(tr("As a picture %1 × %2 dots").arg(dots(now.width_mm)).arg(dots(now.height_mm)));
}

bool ExportDialog::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) m_pause.start(); // the preview, whatever else moved
    return QDialog::eventFilter(watched, event);
}

} // namespace blinkwright::app
