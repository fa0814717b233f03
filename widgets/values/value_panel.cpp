#include "widgets/values/value_panel.h"

#include "core/devices/board.h"
#include "widgets/values/value_row.h"

#include <QVBoxLayout>
#include <algorithm>

namespace blinkwright::widgets {

using namespace circuit;

namespace {

std::optional<double> numberOf(const Circuit& circuit, PartSet set, PartId part, std::string_view key) {
    const std::optional<Value> value = devices::effectiveValue(circuit, set, part, key);
    const double* number = value ? std::get_if<double>(&*value) : nullptr;
    return number ? std::optional(*number) : std::nullopt;
}

/// A line about a part that has no value to turn here: a lamp's colour and rating.
class LampLine : public QWidget {
  public:
    LampLine() : m_ref(new QLabel), m_text(new QLabel) {
        QFont bold = m_ref->font();
        bold.setBold(true);
        m_ref->setFont(bold);
        auto* layout = new QHBoxLayout(this);
        layout->setContentsMargins(10, 4, 8, 4);
        layout->setSpacing(8);
        layout->addWidget(m_ref);
        layout->addWidget(m_text, 1);
    }
    void setTexts(const QString& ref, const QString& text) {
        if (m_ref->text() != ref) m_ref->setText(ref);
        if (m_text->text() != text) m_text->setText(text);
        setAccessibleName(ref + QLatin1Char(' ') + text);
    }
    int refWidth() const { return m_ref->sizeHint().width(); }
    void setRefWidth(int width) { m_ref->setFixedWidth(width); }
    void setTheme(const Theme& theme) {
        m_theme = &Theme::of(theme.mode);
        QPalette p = theme.palette();
        p.setColor(QPalette::WindowText, theme.quietInk);
        m_text->setPalette(p);
    }
    void setMarked(bool on) {
        m_marked = on;
        update();
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        if (!m_marked) return;
        QPainter painter(this);
        painter.fillRect(rect(), m_theme->paper);
        painter.fillRect(QRect(0, 0, 4, height()), m_theme->accent);
    }

  private:
    QLabel *m_ref, *m_text;
    const Theme* m_theme = &Theme::of(Theme::Mode::light);
    bool m_marked = false;
};

} // namespace

class ValuePanel::Private {
  public:
    /// What a row stands for; rows are made anew only when this list changes.
    struct Entry {
        ValueRowSubject subject; ///< with an empty key: a lamp's line
        ValueRow* row = nullptr;
        LampLine* line = nullptr;
        QWidget* widget() const { return row ? static_cast<QWidget*>(row) : line; }
    };

    explicit Private(ValuePanel* panel) : q(panel), theme(Theme::of(Theme::Mode::light)) {
        panel->setWidgetResizable(true);
        panel->setFrameShape(QFrame::NoFrame);
        panel->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        panel->setFocusPolicy(Qt::NoFocus);
        panel->setAccessibleName(ValuePanel::tr("Values"));
        refill({});
    }

    static std::vector<ValueRowSubject> subjectsOf(const Circuit& circuit) {
        std::vector<ValueRowSubject> out;
        for (const Part& part : circuit.parts()) {
            for (const KeyInfo& key : info(part.kind).keys)
                if (scaleKind(part.kind, key.key))
                    out.push_back({part.id, part.kind, std::string(key.key), part.ref});
            if (part.kind == PartKind::lamp) out.push_back({part.id, part.kind, {}, part.ref});
        }
        return out;
    }

    void refill(const std::vector<ValueRowSubject>& subjects) {
        endGesture();
        marked.reset();
        entries.clear();
        auto* inside = new QWidget;
        auto* column = new QVBoxLayout(inside);
        column->setContentsMargins(0, 2, 0, 4);
        column->setSpacing(0);
        title = new QLabel;
        title->setContentsMargins(10, 0, 8, 2);
        column->addWidget(title);
        int refWidth = 0, whatWidth = 0;
        for (const ValueRowSubject& subject : subjects) {
            Entry entry{subject, nullptr, nullptr};
            if (subject.key.empty()) {
                entry.line = new LampLine;
                entry.line->setTexts(QString::fromStdString(subject.ref), {});
                refWidth = std::max(refWidth, entry.line->refWidth());
            } else {
                entry.row = new ValueRow(subject, *scaleKind(subject.kind, subject.key));
                watch(entry.row);
                refWidth = std::max(refWidth, entry.row->labelWidths().width());
                whatWidth = std::max(whatWidth, entry.row->labelWidths().height());
            }
            column->addWidget(entry.widget());
            entries.push_back(entry);
        }
        for (const Entry& entry : entries) {
            if (entry.row) entry.row->setLabelWidths({refWidth, whatWidth});
            if (entry.line) entry.line->setRefWidth(refWidth);
        }
        column->addStretch(1);
        q->setWidget(inside); // deletes the one before
        colour();
    }

    void watch(ValueRow* row) {
        const ValueRef which{row->subject().part, row->subject().key};
        QObject::connect(row, &ValueRow::began, q, [this] {
            endGesture();
            gesture = ++lastGesture;
            emit q->gestureBegan(gesture);
        });
        QObject::connect(row, &ValueRow::wished, q,
                         [this, which](double value) { emit q->valueWished(which, value, gesture); });
        QObject::connect(row, &ValueRow::ended, q, [this] { endGesture(); });
        QObject::connect(row, &ValueRow::focused, q, [this, row, which] {
            mark(which.part);
            q->ensureWidgetVisible(row, 0, 0); // coming in by Tab, the row may be out of sight
            emit q->partActivated(which.part);
        });
    }
    void endGesture() {
        if (gesture == 0) return;
        const int ended = gesture;
        gesture = 0;
        emit q->gestureEnded(ended);
    }
    void mark(PartId part) {
        marked = part;
        for (const Entry& entry : entries) {
            const bool on = entry.subject.part == part;
            if (entry.row) entry.row->setMarked(on);
            if (entry.line) entry.line->setMarked(on);
        }
    }
    void colour() {
        const QColor handle = set == PartSet::A ? theme.setA : theme.setB;
        q->setPalette(theme.palette());
        title->setText(set == PartSet::A ? ValuePanel::tr("Set A") : ValuePanel::tr("Set B"));
        QPalette p = theme.palette();
        p.setColor(QPalette::WindowText, handle);
        title->setPalette(p);
        for (const Entry& entry : entries) {
            if (entry.row) entry.row->setColours(theme, handle);
            if (entry.line) entry.line->setTheme(theme);
        }
        if (marked) mark(*marked);
    }
    static QString lampText(const Circuit& circuit, PartSet set, PartId part) {
        const std::optional<Value> colour = devices::effectiveValue(circuit, set, part, "colour");
        const std::string* word = colour ? std::get_if<std::string>(&*colour) : nullptr;
        QString text =
            word ? ValuePanel::tr("lamp, %1").arg(QString::fromStdString(*word)) : ValuePanel::tr("lamp");
        if (const auto rated = numberOf(circuit, set, part, "rated_current"))
            text += ValuePanel::tr(", rated %1")
                        .arg(QString::fromStdString(units::formatQuantity(*rated, units::Unit::ampere, 6)));
        return text;
    }

    ValuePanel* q;
    Theme theme;
    PartSet set = PartSet::A;
    QLabel* title = nullptr;
    std::vector<Entry> entries;
    std::optional<PartId> marked;
    int gesture = 0;
    int lastGesture = 0;
};

ValuePanel::ValuePanel(QWidget* parent) : QScrollArea(parent), d(std::make_unique<Private>(this)) {
}

ValuePanel::~ValuePanel() {
    for (const Private::Entry& entry : d->entries)
        if (entry.row) entry.row->disconnect(this); // rows go later than what their signals reach
}

void ValuePanel::setCircuit(const Circuit& circuit, PartSet set) {
    const std::vector<ValueRowSubject> subjects = Private::subjectsOf(circuit);
    const bool same =
        std::equal(subjects.begin(), subjects.end(), d->entries.begin(), d->entries.end(),
                   [](const ValueRowSubject& a, const Private::Entry& b) { return a == b.subject; });
    const bool newSet = set != d->set;
    d->set = set;
    if (!same)
        d->refill(subjects);
    else if (newSet)
        d->colour();
    for (const Private::Entry& entry : d->entries) {
        const ValueRowSubject& s = entry.subject;
        if (entry.line)
            entry.line->setTexts(QString::fromStdString(s.ref), Private::lampText(circuit, set, s.part));
        else if (const auto value = numberOf(circuit, set, s.part, s.key))
            entry.row->showValue(*value);
    }
}

void ValuePanel::setTheme(const Theme& theme) {
    d->theme = theme;
    d->colour();
}

void ValuePanel::showPart(PartId part) {
    d->mark(part);
    for (const Private::Entry& entry : d->entries)
        if (entry.subject.part == part) {
            ensureWidgetVisible(entry.widget(), 0, 20);
            return;
        }
}

} // namespace blinkwright::widgets
