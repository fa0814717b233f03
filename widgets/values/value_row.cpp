#include "widgets/values/value_row.h"

#include "core/base/wording.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/part_meaning.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/text_sized.h"
#include "widgets/values/tie_mark.h"

#include <QContextMenuEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QPainter>

namespace blinkwright::widgets {

namespace {
constexpr int quiet_ms = 600; // a run of key presses or wheel notches ends after this long without one

bool isShare(const ValueRowSubject& s) {
    return s.key == "setting";
}
/// How a value may be typed, by examples that the reader of quantities takes.
QString hintFor(units::Unit unit) {
    switch (unit) {
    case units::Unit::ohm:
        return ValueRow::tr("Type a value, such as 4k7, 4.7k or 4,7 kΩ, and press Enter");
    case units::Unit::farad:
        return ValueRow::tr("Type a value, such as 220n, 0.22u or 0,22 µF, and press Enter");
    default:
        return ValueRow::tr("Type a value and press Enter");
    }
}
} // namespace

ValueRow::ValueRow(const ValueRowSubject& subject, const ScaleKind& kind, Column column, QWidget* parent)
    : QWidget(parent), m_subject(subject), m_kind(kind), m_theme(Theme::of(Theme::Mode::light)) {
    const circuit::KeyInfo* key = circuit::findKey(circuit::info(subject.kind), subject.key);
    const QString label = QString::fromStdString(key ? wording::inWords(key->label) : subject.key);
    const QString ref = QString::fromStdString(subject.ref);
    m_ref = new QLabel(ref);
    QFont bold = m_ref->font();
    bold.setBold(true);
    m_ref->setFont(bold);
    m_what = new QLabel(label);
    m_tie = new TieMark;
    m_tie->hide();
    m_slider = new ScaleSlider;
    m_field = new QLineEdit;
    m_reason = new QLabel;
    m_reason->setWordWrap(true);
    m_reason->hide();
    const QString meaning = valueMeaning(subject.kind, subject.key);
    m_field->setWhatsThis(meaning);
    m_slider->setWhatsThis(
        tr("%1 The arrow keys move it finely, Page Up and Page Down coarsely; the curves follow at once.")
            .arg(meaning));
    m_field->setAlignment(Qt::AlignRight);
    sizedByText(*m_field, [this] {
        m_field->setFixedWidth(m_field->fontMetrics().horizontalAdvance(QStringLiteral("0000.00 MΩ")) + 18);
    });
    m_name = tr("%1 %2").arg(ref, label);
    setSetName({});
    m_slider->setToolTip(tr("Drag, or hold Shift to drag ten times finer"));
    m_hint = hintFor(key ? key->unit : units::Unit::none);
    m_field->setToolTip(m_hint);
    m_field->setAccessibleDescription(m_hint);

    auto* names = new QHBoxLayout;
    names->setSpacing(8);
    names->addWidget(m_ref);
    names->addWidget(m_what);
    names->addWidget(m_tie);
    const bool second = column == Column::second;
    if (second)
        for (QWidget* unused : std::initializer_list<QWidget*>{m_ref, m_what, m_tie}) {
            unused->setParent(this); // and never shown without one: it would be a window of its own
            unused->hide();
        }
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(second ? 0 : 10, 1, 8, 1);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(1);
    if (second)
        delete names;
    else
        grid->addLayout(names, 0, 0);
    grid->addWidget(m_slider, 0, 1);
    grid->addWidget(m_field, 0, 2);
    grid->addWidget(m_reason, 1, 1, 1, 2);
    grid->setColumnStretch(1, 1);

    m_quiet.setSingleShot(true);
    m_quiet.setInterval(quiet_ms);
    connect(&m_quiet, &QTimer::timeout, this, &ValueRow::endBurst);
    connect(m_slider, &ScaleSlider::pressed, this, [this] {
        endBurst();
        restoreText();
        m_gesture = true;
        emit began();
    });
    connect(m_slider, &ScaleSlider::dragged, this, &ValueRow::wish);
    connect(m_slider, &ScaleSlider::released, this, &ValueRow::endGesture);
    connect(m_slider, &ScaleSlider::stepWished, this,
            [this](int steps, bool coarse) { burst(m_slider->scale().stepped(m_value, steps, coarse)); });
    connect(m_slider, &ScaleSlider::endWished, this,
            [this](bool high) { burst(high ? m_slider->scale().high : m_slider->scale().low); });
    connect(m_field, &QLineEdit::returnPressed, this, &ValueRow::enterTyped);
    m_slider->installEventFilter(this);
    m_field->installEventFilter(this);
}

void ValueRow::setSetName(const QString& set) {
    const QString name = set.isEmpty() ? m_name : tr("%1 in %2").arg(m_name, set);
    m_slider->setAccessibleName(name);
    m_field->setAccessibleName(name);
}

void ValueRow::setReadOnly(bool on) {
    m_slider->setEnabled(!on);
    m_slider->setToolTip(on ? QString() : tr("Drag, or hold Shift to drag ten times finer"));
    m_field->setReadOnly(on);
    if (on == m_readOnly) return;
    m_readOnly = on;
    m_hint = on ? tr("Read only") : hintFor(unit());
    restoreText();
}

void ValueRow::showNoValue() {
    m_known = false;
    m_field->setText(noValue);
    m_slider->setValue(0, {});
}

void ValueRow::setDescriptionShown(bool on) {
    m_what->setVisible(on);
}

void ValueRow::setTies(const QStringList& others, bool room) {
    m_tie->setOthers(others);
    m_tie->setVisible(room);
    const QString with = others.isEmpty() ? QString() : m_tie->accessibleName() + QStringLiteral(". ");
    m_slider->setAccessibleDescription(with);
}

units::Unit ValueRow::unit() const {
    const circuit::KeyInfo* key = circuit::findKey(circuit::info(m_subject.kind), m_subject.key);
    return key ? key->unit : units::Unit::none;
}

QString ValueRow::textOf(double value) const {
    if (isShare(m_subject)) return plainNumber(value * 100, 'g', 6) + QChar(0x00A0) + QLatin1Char('%');
    const circuit::KeyInfo* key = circuit::findKey(circuit::info(m_subject.kind), m_subject.key);
    return QString::fromStdString(units::formatQuantity(value, key ? key->unit : units::Unit::none, 6));
}

Result<double> ValueRow::valueOf(const QString& text) const {
    const circuit::KeyInfo* key = circuit::findKey(circuit::info(m_subject.kind), m_subject.key);
    QString plain = text.trimmed();
    if (isShare(m_subject)) plain.remove(QLatin1Char('%'));
    Result<double> read =
        units::parseQuantity(plain.trimmed().toStdString(), key ? key->unit : units::Unit::none);
    if (!read) return read;
    // The field shows per cent, so that is what a bare number means in it.
    const double value = isShare(m_subject) ? read.value() / 100 : read.value();
    if (Result<void> legal = circuit::Circuit::canSet(m_subject.kind, m_subject.key, value); !legal)
        return legal.fault();
    return value;
}

void ValueRow::showValue(double value) {
    m_held = value;
    if (m_gesture || (m_known && value == m_value)) return;
    const bool typing = m_field->isModified();
    m_value = value;
    m_known = true;
    const QString text = textOf(value);
    if (!m_slider->scale().contains(value) || m_slider->scale().kind.most == 0)
        m_slider->setScale(ValueScale::around(m_kind, value));
    m_slider->setValue(value, text);
    if (m_refused)
        restoreText(); // what was refused, and the value to go back to, are of before this change
    else if (!typing && m_field->text() != text)
        m_field->setText(text);
}

void ValueRow::wish(double value) {
    m_value = value;
    const QString text = textOf(value);
    m_slider->setValue(value, text);
    m_field->setText(text);
    emit wished(value);
}

void ValueRow::burst(double value) {
    if (!m_gesture) {
        restoreText();
        m_gesture = true;
        emit began();
    }
    m_quiet.start();
    if (value == m_value) return;
    if (!m_slider->scale().contains(value)) m_slider->setScale(ValueScale::around(m_kind, value));
    wish(value);
}

void ValueRow::endBurst() {
    m_quiet.stop();
    if (m_gesture && !m_slider->dragging()) endGesture();
}

void ValueRow::endGesture() {
    m_gesture = false;
    if (m_known) showValue(m_held); // where a wish was refused, the row must not go on showing it
    rescale();
    emit ended();
}

void ValueRow::rescale() {
    const double place = m_slider->scale().place(m_value);
    if (!m_kind.ratios || (place > 0.02 && place < 0.98)) return;
    m_slider->setScale(ValueScale::around(m_kind, m_value)); // at an end: the next stretch
}

void ValueRow::enterTyped() {
    if (!m_field->isModified() && !m_refused) return;
    endBurst();
    const Result<double> value = valueOf(m_field->text());
    if (!value) {
        refuse(QString::fromStdString(value.fault().text));
        return;
    }
    restoreText();
    if (value.value() == m_value) return;
    emit began();
    if (!m_slider->scale().contains(value.value()))
        m_slider->setScale(ValueScale::around(m_kind, value.value()));
    wish(value.value());
    emit ended();
}

void ValueRow::restoreText() {
    m_refused = false;
    m_reason->hide();
    m_reason->clear();
    m_field->setToolTip(m_hint);
    m_field->setAccessibleDescription(m_hint);
    m_field->setText(m_known ? textOf(m_value) : noValue); // also counts as not modified
    setColours(m_theme, {});
}

void ValueRow::refuse(const QString& reason) {
    m_refused = true;
    const QString text =
        QStringLiteral("✕ ") + tr("%1. Escape brings back %2.").arg(sentenceCase(reason), textOf(m_value));
    m_reason->setText(text);
    m_reason->show();
    m_field->setToolTip(text);
    m_field->setAccessibleDescription(text);
    setColours(m_theme, {});
}

void ValueRow::setColours(const Theme& theme, const QColor& handle) {
    m_theme = theme;
    if (handle.isValid()) m_slider->setColours(theme, handle);
    QPalette quiet = palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    m_what->setPalette(quiet);
    QPalette fault = palette();
    fault.setColor(QPalette::WindowText, theme.fault);
    m_reason->setPalette(fault);
    QPalette field = theme.palette();
    if (m_refused) field.setColor(QPalette::Text, theme.fault);
    m_field->setPalette(field);
    update();
}

void ValueRow::setMarked(bool on, bool strip) {
    m_strip = strip;
    if (m_marked == on) return;
    m_marked = on;
    update();
}

QSize ValueRow::labelWidths() const {
    return {m_ref->sizeHint().width(), m_what->sizeHint().width()};
}

void ValueRow::setLabelWidths(QSize widths) {
    m_ref->setFixedWidth(widths.width());
    m_what->setFixedWidth(widths.height());
}

bool ValueRow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn) emit focused();
    if (event->type() == QEvent::FocusOut) {
        endBurst();
        if (watched == m_field && static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason)
            enterTyped();
    }
    if (watched == m_field && event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape && (m_refused || m_field->isModified())) {
        event->accept();
        return true;
    }
    if (watched == m_field && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Escape && (m_refused || m_field->isModified())) {
            restoreText();
            m_field->selectAll();
            return true;
        }
        if ((key == Qt::Key_Up || key == Qt::Key_Down) && !m_field->isModified() && !m_refused) {
            burst(m_slider->scale().stepped(m_value, key == Qt::Key_Up ? 1 : -1, false));
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void ValueRow::paintEvent(QPaintEvent*) {
    if (!m_marked && !m_refused) return;
    QPainter painter(this);
    if (m_marked) {
        painter.fillRect(rect(), m_theme.paper);
        if (m_strip) painter.fillRect(QRect(0, 0, 4, height()), m_theme.accent);
    }
    if (m_refused) {
        painter.setPen(QPen(m_theme.fault, 2));
        painter.drawRect(QRectF(m_field->geometry()).adjusted(-1, -1, 1, 1));
    }
}

void ValueRow::mousePressEvent(QMouseEvent* event) {
    emit focused();
    QWidget::mousePressEvent(event);
}

void ValueRow::contextMenuEvent(QContextMenuEvent* event) {
    emit menuWished(event->globalPos());
    event->accept();
}

} // namespace blinkwright::widgets
