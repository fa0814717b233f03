#include "widgets/values/set_column.h"

#include "core/base/wording.h"

#include <QHBoxLayout>

namespace blinkwright::widgets {

namespace {
constexpr int spacing = 4;
constexpr int rowMargins = 8 + 8; // of the row: between slider and field, and at the right
} // namespace

SetCell::SetCell(const ValueRowSubject& subject, const ScaleKind& kind, QWidget* parent)
    : QWidget(parent), m_row(new ValueRow(subject, kind, ValueRow::Column::second)) {
    const circuit::KeyInfo* key = circuit::findKey(circuit::info(subject.kind), subject.key);
    QString name = QString::fromStdString(subject.ref);
    if (key) name += QLatin1Char(' ') + QString::fromStdString(wording::inWords(key->label));
    m_follow = new FollowButton(name);
    QSizePolicy keep = m_follow->sizePolicy();
    keep.setRetainSizeWhenHidden(true); // sliders begin alike, whether a value can be tied or not
    m_follow->setSizePolicy(keep);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing);
    line->addWidget(m_follow, 0, Qt::AlignTop);
    line->addWidget(m_row, 1);
}

int SetCell::fixedWidth() const {
    return m_follow->width() + spacing + rowMargins + m_row->field()->width();
}

void SetCell::showValue(double value, bool follows, const QString& set) {
    m_row->setSetName(set);
    m_row->setReadOnly(false);
    m_row->showValue(value);
    m_follow->setFollowing(follows);
    m_follow->setVisible(true);
}

void SetCell::showReadOnly(std::optional<double> value, const QString& name) {
    m_follow->setVisible(false);
    m_row->setSetName(name);
    m_row->setReadOnly(true);
    if (value)
        m_row->showValue(*value);
    else
        m_row->showNoValue();
}

void SetCell::setTheme(const Theme& theme) {
    m_follow->setTheme(theme);
    m_row->setColours(theme, theme.setB);
}

} // namespace blinkwright::widgets
