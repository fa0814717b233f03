#include "app/undo.h"

#include "app/document.h"

#include <algorithm>

namespace blinkwright::app {

namespace {

using circuit::Edit;

void flatten(const Edit& edit, std::vector<Edit>& leaves) {
    if (const auto* group = std::get_if<circuit::edits::Group>(&edit.kind))
        for (const Edit& inner : group->edits) flatten(inner, leaves);
    else
        leaves.push_back(edit);
}

/// Whether `a` writes the same place as `b` and nothing else, so that of the two only the last one done
/// counts.
bool overwrites(const Edit& a, const Edit& b) {
    using namespace circuit::edits;
    if (a.kind.index() != b.kind.index()) return false;
    if (const auto* value = std::get_if<SetValue>(&a.kind)) {
        const auto& other = std::get<SetValue>(b.kind);
        return value->layer == other.layer && value->part == other.part && value->key == other.key;
    }
    if (const auto* place = std::get_if<Place>(&a.kind)) return place->part == std::get<Place>(b.kind).part;
    return std::holds_alternative<SetTitle>(a.kind) || std::holds_alternative<SetNotes>(a.kind) ||
           std::holds_alternative<SetRun>(a.kind);
}

/// Edits that write one place each: their order among different places does not matter.
bool isPlainWrite(const Edit& edit) {
    return overwrites(edit, edit);
}

/// What is stated where an edit would write, or nothing.
std::optional<circuit::Value> statedAt(const circuit::Circuit& circuit,
                                       const circuit::edits::SetValue& edit) {
    const circuit::Part* part = circuit.find(edit.part);
    if (!part) return {};
    const circuit::Values& values = edit.layer == circuit::Layer::part ? part->values
                                    : edit.layer == circuit::Layer::setA
                                        ? circuit.overrides(circuit::PartSet::A, edit.part)
                                        : circuit.overrides(circuit::PartSet::B, edit.part);
    const auto found = values.find(edit.key);
    return found == values.end() ? std::nullopt : std::optional(found->second);
}

/// Whether an edit of values or places would change nothing: a drag that has come back to where it began.
bool changesNothing(const circuit::Circuit& circuit, const Edit& edit) {
    std::vector<Edit> leaves;
    flatten(edit, leaves);
    return std::ranges::all_of(leaves, [&](const Edit& leaf) {
        if (const auto* place = std::get_if<circuit::edits::Place>(&leaf.kind)) {
            const circuit::Placement* now = circuit.placement(place->part);
            return now ? place->placement == *now : !place->placement;
        }
        const auto* value = std::get_if<circuit::edits::SetValue>(&leaf.kind);
        return value && statedAt(circuit, *value) == value->value;
    });
}

} // namespace

Edit joined(const Edit& later, const Edit& earlier) {
    std::vector<Edit> first;
    std::vector<Edit> second;
    flatten(later, first);
    flatten(earlier, second);
    if (std::ranges::all_of(first, isPlainWrite) && std::ranges::all_of(second, isPlainWrite))
        std::erase_if(first, [&](const Edit& edit) {
            return std::ranges::any_of(second, [&](const Edit& last) { return overwrites(last, edit); });
        });
    first.insert(first.end(), second.begin(), second.end());
    if (first.size() == 1) return first.front();
    return Edit{circuit::edits::Group{{}, std::move(first)}};
}

EditCommand::EditCommand(Document& document, const QString& text, Edit back, int gesture)
    : QUndoCommand(text), m_document(document), m_edit(std::move(back)), m_gesture(gesture) {
}

void EditCommand::undo() {
    toggle();
}

void EditCommand::redo() {
    if (!m_done) toggle();
}

int EditCommand::id() const {
    constexpr int merging = 1;
    constexpr int alone = -1;
    return m_gesture != 0 ? merging : alone;
}

bool EditCommand::mergeWith(const QUndoCommand* later) {
    const auto* other = dynamic_cast<const EditCommand*>(later);
    if (!other || other->m_gesture != m_gesture || !m_done || !other->m_done) return false;
    m_edit = joined(other->m_edit, m_edit);
    setText(other->text());
    setObsolete(changesNothing(m_document.circuit(), m_edit));
    return true;
}

void EditCommand::toggle() {
    m_edit = m_document.replay(m_edit);
    m_done = !m_done;
}

} // namespace blinkwright::app
