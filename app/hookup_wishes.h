// Makes the wishes of the Hook-up into edits of the document, and says why where one cannot be done.
//
//   HookupWishes wishes(document, hookup);
//   connect(&wishes, &HookupWishes::said, statusBar, showMessage);
//   wishes.addNear(PartKind::lamp);
//   wishes.join("R1:2", "U1:7");
// A circuit whose places the program chose gets them stated with the first edit: nothing jumps under the
// hand.
#pragma once

#include "app/document.h"
#include "widgets/hookup/hookup_view.h"

namespace blinkwright::app {

class HookupWishes : public QObject {
    Q_OBJECT
  public:
    HookupWishes(Document& document, widgets::HookupView& hookup, QObject* parent = nullptr);

    /// Adds a part at a free place near the pointer or the middle, and chooses it.
    void addNear(circuit::PartKind kind);
    void addAt(circuit::PartKind kind, const circuit::Placement& place);

    void cut();
    void copy();
    void paste();
    void duplicate();
    static bool canPaste();

    /// @param first REF:PIN. @param second REF:PIN, or the name of a net.
    Result<void> join(const QString& first, const QString& second);
    Result<void> takeOff(const QString& pin);
    Result<void> renameNet(const QString& net, const QString& name);
    /// @param net its name, or REF:PIN of a pin in it.
    Result<void> removeNet(const QString& net);

    Result<void> apply(const circuit::Edit& edit, int gesture = 0);

  signals:
    void said(const QString& why);

  private:
    void wish(const widgets::hookup::Wish& wish, int gesture);
    Result<circuit::Edit> editOf(const widgets::hookup::Wish& wish) const;
    bool tryApply(const Result<circuit::Edit>& edit, int gesture = 0);
    /// Adds parts and chooses them.
    void bring(const Result<circuit::NewParts>& parts);
    circuit::Edit withPlaces(const circuit::Edit& edit) const;

    Document& m_document;
    widgets::HookupView& m_hookup;
    int m_viewGesture = 0; ///< of the last wish
    int m_gesture = 0;     ///< the document's for it
};

} // namespace blinkwright::app
