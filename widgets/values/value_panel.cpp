#include "widgets/values/value_panel.h"

#include "core/circuit/set_edits.h"
#include "core/devices/board.h"
#include "widgets/text/text_sized.h"
#include "widgets/values/row_menu.h"
#include "widgets/values/set_column.h"

#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

namespace blinkwright::widgets {

using namespace circuit;

namespace {

constexpr int rowMargin = 18; // left and right of a row
constexpr int labelGap = 8;   // between the parts of a row
constexpr int tieRoom = 18 + labelGap;
constexpr int leastSlider = 60;

std::optional<double> numberOf(const Circuit& circuit, PartSet set, PartId part, std::string_view key) {
    const std::optional<Value> value = devices::effectiveValue(circuit, set, part, key);
    const double* number = value ? std::get_if<double>(&*value) : nullptr;
    return number ? std::optional(*number) : std::nullopt;
}

/// A row with room beside it for the second column.
class PairLine : public QWidget {
  public:
    explicit PairLine(ValueRow* row) {
        m_line = new QHBoxLayout(this);
        m_line->setContentsMargins(0, 0, 0, 0);
        m_line->setSpacing(0);
        m_line->addWidget(row, 1);
    }
    void take(SetCell* cell) { m_line->addWidget(cell); }

  private:
    QHBoxLayout* m_line;
};

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
        PairLine* pair = nullptr; ///< with the row in it
        SetCell* cell = nullptr;  ///< made when the second column is first shown
        QWidget* widget() const { return pair ? static_cast<QWidget*>(pair) : line; }
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
        secondTitle = new QLabel;
        secondTitle->setContentsMargins(34, 0, 8, 2); // begins where the sliders do
        if (!second) secondTitle->hide();
        auto* titles = new QHBoxLayout;
        titles->setSpacing(0);
        titles->addWidget(title, 1);
        titles->addWidget(secondTitle);
        column->addLayout(titles);
        for (const ValueRowSubject& subject : subjects) {
            Entry entry;
            entry.subject = subject;
            if (subject.key.empty()) {
                entry.line = new LampLine;
                entry.line->setTexts(QString::fromStdString(subject.ref), {});
            } else {
                entry.row = new ValueRow(subject, *scaleKind(subject.kind, subject.key));
                entry.pair = new PairLine(entry.row);
                watch(entry.row, PartSet::A);
            }
            column->addWidget(entry.widget());
            entries.push_back(entry);
        }
        column->addStretch(1);
        q->setWidget(inside); // deletes the one before
        measure();
        if (second) makeCells();
        colour();
    }

    /// References stand under each other, and what they are; anew with another font.
    void measure() {
        int refWidth = 0, whatWidth = 0;
        for (const Entry& entry : entries) {
            if (entry.line) refWidth = std::max(refWidth, entry.line->refWidth());
            if (!entry.row) continue;
            refWidth = std::max(refWidth, entry.row->labelWidths().width());
            whatWidth = std::max(whatWidth, entry.row->labelWidths().height());
        }
        for (const Entry& entry : entries) {
            if (entry.row) entry.row->setLabelWidths({refWidth, whatWidth});
            if (entry.line) entry.line->setRefWidth(refWidth);
        }
        labelWidth = refWidth + labelGap + whatWidth;
    }

    // --- the second column
    void makeCells() {
        for (Entry& entry : entries) {
            if (!entry.row) continue;
            if (!entry.cell) {
                entry.cell = new SetCell(entry.subject, *scaleKind(entry.subject.kind, entry.subject.key));
                entry.pair->take(entry.cell);
                watch(entry.cell->row(), PartSet::B);
                const ValueRef which{entry.subject.part, entry.subject.key};
                QObject::connect(entry.cell->followButton(), &FollowButton::followWished, q,
                                 [this, which](bool on) { emit q->followWished(which, on); });
                entry.cell->setTheme(theme);
                entry.cell->row()->setMarked(marked == entry.subject.part);
            }
            entry.cell->show();
        }
        layOut();
    }
    /// Gives the sliders of both columns one length; where there is too little room, the descriptions go.
    void layOut() {
        int fixed = 0;
        for (const Entry& entry : entries)
            if (entry.cell) fixed = std::max(fixed, entry.cell->fixedWidth());
        const int width = q->viewport()->width();
        const bool tight = second && width < rowMargin + labelWidth + 2 * (fixed + leastSlider);
        for (const Entry& entry : entries)
            if (entry.row) entry.row->setDescriptionShown(!tight);
        if (!second || fixed == 0) return;
        const ValueRow* any = nullptr;
        for (const Entry& entry : entries)
            if (entry.row) any = entry.row;
        const int names = tight ? any->labelWidths().width() : labelWidth;
        const int firstFixed =
            rowMargin + names + labelGap + any->field()->width() + labelGap + (anyTie ? tieRoom : 0);
        const int slider = std::max(leastSlider, (width - firstFixed - fixed) / 2);
        for (const Entry& entry : entries)
            if (entry.cell) entry.cell->setFixedWidth(fixed + slider);
        secondTitle->setFixedWidth(fixed + slider);
    }
    void showTies(const Circuit& circuit) {
        anyTie = !circuit.ties.empty();
        for (const Entry& entry : entries) {
            if (!entry.row) continue;
            QStringList others;
            for (const ValueRef& other : tiedTo(circuit, {entry.subject.part, entry.subject.key}))
                others << valueName(circuit, other);
            entry.row->setTies(others, anyTie);
        }
    }
    void openMenu(const ValueRef& which, QPoint at) {
        if (!held.find(which.part)) return;
        auto* menu = new RowMenu(held, which, second && !readOnly, q);
        QObject::connect(menu, &RowMenu::tieWished, q,
                         [this, which](const ValueRef& to) { emit q->tieWished(which, to); });
        QObject::connect(menu, &RowMenu::untieWished, q, [this, which] { emit q->untieWished(which); });
        QObject::connect(menu, &RowMenu::followWished, q,
                         [this, which](bool on) { emit q->followWished(which, on); });
        menu->popup(at);
    }

    void watch(ValueRow* row, PartSet column) {
        const ValueRef which{row->subject().part, row->subject().key};
        QObject::connect(row, &ValueRow::began, q, [this, column] {
            endGesture();
            gesture = ++lastGesture;
            emit q->gestureBegan(gesture, column);
        });
        QObject::connect(row, &ValueRow::wished, q, [this, which, column](double value) {
            if (column == PartSet::A)
                emit q->valueWished(which, value, gesture);
            else
                emit q->secondWished(which, value, gesture);
        });
        QObject::connect(row, &ValueRow::menuWished, q, [this, which](QPoint at) { openMenu(which, at); });
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
            if (entry.cell) entry.cell->row()->setMarked(on, false);
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
        p.setColor(QPalette::WindowText, theme.setB);
        secondTitle->setPalette(p);
        secondTitle->setText(secondName);
        for (const Entry& entry : entries) {
            if (entry.row) entry.row->setColours(theme, handle);
            if (entry.cell) entry.cell->setTheme(theme);
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
    QLabel* secondTitle = nullptr;
    bool second = false;   ///< whether the second column is shown
    bool readOnly = false; ///< and only to be looked at
    QString secondName;
    Circuit held; ///< as last shown, for the menu of a row
    bool anyTie = false;
    int labelWidth = 0; ///< of reference and description [px]
    std::vector<Entry> entries;
    std::optional<PartId> marked;
    int gesture = 0;
    int lastGesture = 0;
};

ValuePanel::ValuePanel(QWidget* parent) : QScrollArea(parent), d(std::make_unique<Private>(this)) {
    const auto fit = [this] {
        d->measure();
        d->layOut();
    };
    // The fonts of the rows' own labels come after that of the panel.
    sizedByText(*this, [this, fit] { QTimer::singleShot(0, this, fit); });
}

ValuePanel::~ValuePanel() {
    for (const Private::Entry& entry : d->entries)
        for (ValueRow* row : {entry.row, entry.cell ? entry.cell->row() : nullptr})
            if (row) row->disconnect(this); // rows go later than what their signals reach
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
    d->held = circuit;
    d->showTies(circuit);
    for (const Private::Entry& entry : d->entries) {
        const ValueRowSubject& s = entry.subject;
        if (entry.line)
            entry.line->setTexts(QString::fromStdString(s.ref), Private::lampText(circuit, set, s.part));
        else if (const auto value = numberOf(circuit, set, s.part, s.key))
            entry.row->showValue(*value);
    }
}

void ValuePanel::showSecond(const Circuit& circuit, PartSet set, const QString& title, bool readOnly) {
    const bool fresh = !std::exchange(d->second, true);
    d->readOnly = readOnly;
    if (fresh) {
        d->makeCells();
        d->secondTitle->show();
    }
    if (std::exchange(d->secondName, title) != title || fresh) d->colour();
    for (const Private::Entry& entry : d->entries) {
        const ValueRowSubject& s = entry.subject;
        if (!entry.cell) continue;
        if (readOnly) {
            const Part* twin = circuit.findRef(s.ref);
            const bool there = twin && twin->kind == s.kind;
            entry.cell->showReadOnly(there ? numberOf(circuit, set, twin->id, s.key) : std::nullopt, title);
        } else if (const auto value = numberOf(circuit, set, s.part, s.key)) {
            entry.cell->showValue(*value, followsA(circuit, s.part, s.key), title);
        }
    }
}

void ValuePanel::hideSecond() {
    if (!std::exchange(d->second, false)) return;
    d->endGesture();
    for (const Private::Entry& entry : d->entries)
        if (entry.cell) entry.cell->hide();
    d->secondTitle->hide();
    d->secondName.clear();
    d->layOut();
}

void ValuePanel::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    d->layOut();
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
