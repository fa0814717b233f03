#include "widgets/rooms/room_frame.h"

#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace blinkwright::widgets {

namespace {

constexpr int progressWidth = 140, progressSteps = 1000, betweenControls = 14;

} // namespace

class RoomFrame::Private {
  public:
    explicit Private(RoomFrame& frame) : q(frame) {}

    void make() {
        sets = new QComboBox;
        sets->setObjectName(QStringLiteral("sets"));
        sets->setAccessibleName(tr("Set of values"));
        sets->setWhatsThis(
            tr("Which set of values the question is about. It stands here only while the sets differ."));
        sets->addItems({tr("Set A"), tr("Set B")});
        sets->hide();
        connect(sets, &QComboBox::currentIndexChanged, &q, &RoomFrame::setChosen);

        message = new QLabel;
        message->setObjectName(QStringLiteral("message"));
        message->setTextFormat(Qt::PlainText);
        message->setWordWrap(true);
        sizedByText(*message, [this] { message->setMinimumHeight(message->fontMetrics().lineSpacing()); });
        message->setTextInteractionFlags(Qt::TextSelectableByMouse);
        progress = new QProgressBar;
        progress->setObjectName(QStringLiteral("progress"));
        progress->setAccessibleName(tr("Progress"));
        progress->setFixedWidth(progressWidth);
        progress->setTextVisible(false);
        cancel = new QPushButton(tr("Cancel"));
        cancel->setObjectName(QStringLiteral("cancel"));
        cancel->setWhatsThis(
            tr("Stops the computation. The next change of the circuit or of a choice asks anew."));
        cancel->setAutoDefault(false);
        connect(cancel, &QPushButton::clicked, &q, &RoomFrame::cancelWished);
        for (QWidget* part : std::initializer_list<QWidget*>{progress, cancel}) {
            QSizePolicy policy = part->sizePolicy();
            policy.setRetainSizeWhenHidden(true); // nothing jumps when a run begins
            part->setSizePolicy(policy);
            part->hide();
        }
        buttons = new QDialogButtonBox(QDialogButtonBox::Close);
        auto* help = new QPushButton(tr("Help"));
        help->setObjectName(QStringLiteral("help"));
        help->setAutoDefault(false);
        help->setWhatsThis(tr("The page of the help about this window."));
        connect(help, &QPushButton::clicked, &q, &RoomFrame::helpWished);
        connect(buttons, &QDialogButtonBox::rejected, &q, &QDialog::close);

        controls = new QVBoxLayout;
        auto* foot = new QHBoxLayout;
        foot->addStretch(1);
        foot->addWidget(progress);
        foot->addWidget(cancel);
        foot->addSpacing(betweenControls);
        foot->addWidget(buttons);
        foot->addWidget(help);
        whole = new QVBoxLayout(&q);
        whole->addLayout(controls);
        whole->addStretch(1); // the body takes its place
        whole->addWidget(message);
        whole->addLayout(foot);
    }

    QHBoxLayout* row(int number) {
        while (controls->count() <= number) {
            auto* made = new QHBoxLayout;
            made->addStretch(1);
            if (controls->count() == 0) made->addWidget(sets);
            controls->addLayout(made);
        }
        return static_cast<QHBoxLayout*>(controls->itemAt(number)->layout());
    }

    static QString tr(const char* text) { return RoomFrame::tr(text); }

    RoomFrame& q;
    QVBoxLayout *whole = nullptr, *controls = nullptr;
    QComboBox* sets = nullptr;
    QLabel* message = nullptr;
    QProgressBar* progress = nullptr;
    QPushButton* cancel = nullptr;
    QDialogButtonBox* buttons = nullptr;
    std::vector<int> held; ///< by row: widgets and gaps before the stretch
    QColor plain, fault;
    bool isFault = false, busy = false;

    void colour() {
        QPalette palette = message->palette();
        palette.setColor(QPalette::WindowText, isFault ? fault : plain);
        message->setPalette(palette);
    }
};

RoomFrame::RoomFrame(const QString& title, const QString& name, QWidget* parent)
    : QDialog(parent, Qt::Window), d(std::make_unique<Private>(*this)) {
    setObjectName(name);
    setWindowTitle(title);
    d->make();
}

RoomFrame::~RoomFrame() = default;

void RoomFrame::addControl(const QString& label, QWidget* control, int row) {
    QHBoxLayout* into = d->row(row);
    d->held.resize(std::max(d->held.size(), static_cast<std::size_t>(row) + 1));
    int& at = d->held[static_cast<std::size_t>(row)];
    if (at > 0) into->insertSpacing(at++, betweenControls);
    if (!label.isEmpty()) {
        auto* words = new QLabel(label);
        words->setBuddy(control);
        into->insertWidget(at++, words);
        if (control->accessibleName().isEmpty())
            control->setAccessibleName(QString(label).remove(u'&').remove(u':'));
    }
    into->insertWidget(at++, control);
}

void RoomFrame::setBody(QWidget* body) {
    d->row(0);
    delete d->whole->takeAt(1);
    d->whole->insertWidget(1, body, 1);
}

QPushButton* RoomFrame::addButton(const QString& text) {
    QPushButton* made = d->buttons->addButton(text, QDialogButtonBox::ActionRole);
    made->setAutoDefault(false);
    return made;
}

void RoomFrame::setSetsDiffer(bool differ) {
    if (!differ) d->sets->setCurrentIndex(0);
    d->sets->setVisible(differ);
}

circuit::PartSet RoomFrame::set() const {
    return d->sets->currentIndex() == 1 ? circuit::PartSet::B : circuit::PartSet::A;
}

void RoomFrame::chooseSet(circuit::PartSet set) {
    d->sets->setCurrentIndex(set == circuit::PartSet::B ? 1 : 0);
}

void RoomFrame::setBusy(bool busy) {
    if (std::exchange(d->busy, busy) == busy) return;
    if (busy) setProgress(-1);
    d->progress->setVisible(busy);
    d->cancel->setVisible(busy);
}

void RoomFrame::setProgress(double share) {
    d->progress->setRange(0, share < 0 ? 0 : progressSteps);
    if (share >= 0) d->progress->setValue(static_cast<int>(share * progressSteps));
}

void RoomFrame::setMessage(const QString& sentence, bool isFault) {
    d->isFault = isFault;
    d->message->setText(sentence);
    d->colour();
}

QString RoomFrame::message() const {
    return d->message->text();
}

void RoomFrame::setTheme(const Theme& theme) {
    d->plain = theme.ink;
    d->fault = theme.fault;
    d->colour();
}

void RoomFrame::reject() {
    if (d->busy) return emit cancelWished();
    QDialog::reject();
}

} // namespace blinkwright::widgets
