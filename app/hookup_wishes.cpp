#include "app/hookup_wishes.h"

#include "core/circuit/wiring_edits.h"
#include "core/io/circuit_file.h"

#include <QApplication>
#include <QClipboard>
#include <QMimeData>

namespace blinkwright::app {

namespace {

namespace wishes = widgets::hookup::wishes;
using circuit::Edit;

const QString partsType = QStringLiteral("application/x-blinkwright-parts+json");

QString sentence(const Fault& fault) {
    QString text = QString::fromStdString(fault.message());
    if (!text.endsWith(u'.')) text += u'.';
    return text;
}

/// The parts on the clipboard: by our own type, or as text, as it comes by mail.
Result<circuit::Circuit> clippedParts() {
    const QMimeData* data = QApplication::clipboard()->mimeData();
    const QByteArray bytes = data && data->hasFormat(partsType) ? data->data(partsType)
                             : data                             ? data->text().toUtf8()
                                                                : QByteArray();
    if (!bytes.trimmed().startsWith('{'))
        return Fault{{}, HookupWishes::tr("there are no parts on the clipboard").toStdString()};
    return io::readCircuit(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

} // namespace

HookupWishes::HookupWishes(Document& document, widgets::HookupView& hookup, QObject* parent)
    : QObject(parent), m_document(document), m_hookup(hookup) {
    connect(&hookup, &widgets::HookupView::wished, this, &HookupWishes::wish);
    connect(&hookup, &widgets::HookupView::said, this, &HookupWishes::said);
}

Edit HookupWishes::withPlaces(const Edit& edit) const {
    const circuit::Circuit& circuit = m_document.circuit();
    circuit::edits::Group group{circuit::describe(circuit, edit), {}};
    for (const auto& [part, place] : m_hookup.shownPlaces())
        if (circuit.find(part) && !circuit.placement(part))
            group.edits.push_back({circuit::edits::Place{part, place}});
    if (group.edits.empty()) return edit;
    group.edits.push_back(edit);
    return {std::move(group)};
}

Result<void> HookupWishes::apply(const Edit& edit, int gesture) {
    return m_document.apply(withPlaces(edit), gesture);
}

bool HookupWishes::tryApply(const Result<Edit>& edit, int gesture) {
    const Result<void> done = edit ? apply(edit.value(), gesture) : Result<void>(edit.fault());
    if (!done) emit said(sentence(done.fault()));
    return done.ok();
}

Result<Edit> HookupWishes::editOf(const widgets::hookup::Wish& wish) const {
    struct Maker {
        const circuit::Circuit& c;
        Result<Edit> operator()(const wishes::JoinPins& w) const { return joinPins(c, w.a, w.b); }
        Result<Edit> operator()(const wishes::JoinToNet& w) const { return joinToNet(c, w.pin, w.net); }
        Result<Edit> operator()(const wishes::PullToPin& w) const { return moveWireEnd(c, w.from, w.to); }
        Result<Edit> operator()(const wishes::PullToNet& w) const { return moveWireEnd(c, w.from, w.to); }
        Result<Edit> operator()(const wishes::TakeOff& w) const { return takeOffNet(c, w.pin); }
        Result<Edit> operator()(const wishes::Move& w) const { return moveParts(c, w.shown, w.dx, w.dy); }
        Result<Edit> operator()(const wishes::Turn& w) const { return turnParts(c, w.shown); }
        Result<Edit> operator()(const wishes::Mirror& w) const { return mirrorParts(c, w.shown); }
        Result<Edit> operator()(const wishes::Delete& w) const { return deleteParts(c, w.parts); }
        Result<Edit> operator()(const wishes::DeleteNet& w) const {
            return Edit{circuit::edits::RemoveNet{w.net}};
        }
        Result<Edit> operator()(const wishes::Add& w) const {
            auto added = addPart(c, w.kind, w.place);
            if (!added) return added.fault();
            return std::move(added).value().edit;
        }
    };
    return std::visit(Maker{m_document.circuit()}, wish);
}

void HookupWishes::wish(const widgets::hookup::Wish& wish, int gesture) {
    if (const auto* add = std::get_if<wishes::Add>(&wish)) return addAt(add->kind, add->place);
    if (gesture != 0 && gesture != m_viewGesture) m_gesture = m_document.newGesture();
    m_viewGesture = gesture;
    tryApply(editOf(wish), gesture != 0 ? m_gesture : 0);
}

void HookupWishes::bring(const Result<circuit::NewParts>& parts) {
    if (!parts) return emit said(sentence(parts.fault()));
    if (tryApply(parts.value().edit)) m_hookup.setSelection(parts.value().parts);
}

void HookupWishes::addNear(circuit::PartKind kind) {
    addAt(kind, m_hookup.placeForNew(kind));
}

void HookupWishes::addAt(circuit::PartKind kind, const circuit::Placement& place) {
    bring(addPart(m_document.circuit(), kind, place));
}

void HookupWishes::copy() {
    const circuit::Places chosen = m_hookup.chosenPlaces();
    if (chosen.empty()) return emit said(tr("No part is chosen."));
    const std::string text = io::writeCircuit(copyOf(m_document.circuit(), chosen));
    auto* data = new QMimeData;
    data->setData(partsType, QByteArray::fromStdString(text));
    data->setText(QString::fromStdString(text));
    QApplication::clipboard()->setMimeData(data);
    const circuit::Part* only =
        chosen.size() == 1 ? m_document.circuit().find(chosen.begin()->first) : nullptr;
    emit said(only ? tr("%1 is on the clipboard.").arg(QString::fromStdString(only->ref))
                   : tr("%1 parts are on the clipboard.").arg(chosen.size()));
}

void HookupWishes::cut() {
    if (m_hookup.selection().parts().empty()) return emit said(tr("No part is chosen."));
    copy();
    tryApply(deleteParts(m_document.circuit(), m_hookup.selection().parts()));
}

bool HookupWishes::canPaste() {
    const QMimeData* data = QApplication::clipboard()->mimeData();
    return data && (data->hasFormat(partsType) || data->text().trimmed().startsWith(u'{'));
}

void HookupWishes::paste() {
    const Result<circuit::Circuit> copies = clippedParts();
    if (!copies) return emit said(tr("Nothing was pasted: %1").arg(sentence(copies.fault())));
    const widgets::hookup::Point shift = m_hookup.shiftForPasted(copies.value());
    bring(pasteParts(m_document.circuit(), copies.value(), shift.x, shift.y));
}

void HookupWishes::duplicate() {
    const circuit::Circuit copies = copyOf(m_document.circuit(), m_hookup.chosenPlaces());
    const widgets::hookup::Point shift = m_hookup.shiftForPasted(copies);
    bring(duplicateParts(m_document.circuit(), m_hookup.chosenPlaces(), shift.x, shift.y));
}

Result<void> HookupWishes::join(const QString& first, const QString& second) {
    const circuit::Circuit& circuit = m_document.circuit();
    const auto a = circuit.pinNamed(first.trimmed().toStdString());
    if (!a) return a.fault();
    const std::string other = second.trimmed().toStdString();
    if (const circuit::Net* net = circuit.findNet(other)) {
        const auto edit = joinToNet(circuit, a.value(), net->id);
        return edit ? apply(edit.value()) : Result<void>(edit.fault());
    }
    const auto b = circuit.pinNamed(other);
    if (!b && other.find(':') == other.npos)
        return Fault{
            {},
            tr("there is no net \"%1\", and a pin is written REF:PIN").arg(second.trimmed()).toStdString()};
    if (!b) return b.fault();
    const auto edit = joinPins(circuit, a.value(), b.value());
    return edit ? apply(edit.value()) : Result<void>(edit.fault());
}

Result<void> HookupWishes::takeOff(const QString& pin) {
    const circuit::Circuit& circuit = m_document.circuit();
    const auto found = circuit.pinNamed(pin.trimmed().toStdString());
    if (!found) return found.fault();
    const auto edit = takeOffNet(circuit, found.value());
    return edit ? apply(edit.value()) : Result<void>(edit.fault());
}

Result<void> HookupWishes::renameNet(const QString& net, const QString& name) {
    const circuit::Circuit& circuit = m_document.circuit();
    const circuit::Net* found = circuit.findNet(net.trimmed().toStdString());
    if (!found) return Fault{{}, tr("there is no net \"%1\"").arg(net.trimmed()).toStdString()};
    const auto edit = circuit::renameNet(circuit, found->id, name.trimmed().toStdString());
    return edit ? apply(edit.value()) : Result<void>(edit.fault());
}

Result<void> HookupWishes::removeNet(const QString& net) {
    const circuit::Circuit& circuit = m_document.circuit();
    const std::string name = net.trimmed().toStdString();
    if (const circuit::Net* found = circuit.findNet(name))
        return apply({circuit::edits::RemoveNet{found->id}});
    if (name.find(':') == name.npos)
        return Fault{{}, tr("there is no net \"%1\"").arg(net.trimmed()).toStdString()};
    const auto pin = circuit.pinNamed(name);
    if (!pin) return pin.fault();
    const auto its = circuit.netOf(pin.value());
    if (!its) return Fault{{}, tr("%1 is in no net").arg(net.trimmed()).toStdString()};
    return apply({circuit::edits::RemoveNet{*its}});
}

} // namespace blinkwright::app
