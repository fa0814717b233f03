#include "widgets/ready/ready_dialog.h"

#include "widgets/hookup/hookup_view.h"
#include "widgets/ready/answer_form.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/said.h"
#include "widgets/text/text_sized.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QThreadPool>
#include <QVBoxLayout>

#include <map>

namespace blinkwright::widgets {

using study::ReadyAnswers;
using study::ReadyKind;

namespace {

constexpr QSize firstSize(1000, 660);
constexpr int listWidth = 360, previewHeight = 260;

QString sentenceOf(const Fault& fault) {
    const QString text = sentenceCase(QString::fromStdString(fault.message()));
    return text.endsWith(u'.') ? text : text + u'.';
}

} // namespace

class ReadyDialog::Private {
  public:
    explicit Private(ReadyDialog& dialog) : q(dialog) { m_pool.setMaxThreadCount(1); }

    void make() {
        kinds = new QListWidget;
        kinds->setObjectName(QStringLiteral("kinds"));
        kinds->setAccessibleName(tr("Ready blinkers"));
        kinds->setWhatsThis(
            tr("What kind of blinker is to be made. The questions beside the list and the drawing follow it; "
               "Enter makes it."));
        kinds->setWordWrap(true);
        sizedByText(*kinds, [this] { kinds->setFixedWidth(withText(*kinds, listWidth)); });
        kinds->setSpacing(3);
        kinds->setAlternatingRowColors(true);
        kinds->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        for (const ReadyKind kind : study::allReadyKinds) {
            const study::ReadyInfo& about = study::info(kind);
            kinds->addItem(tr("%1\n%2").arg(said(about.label), said(about.sentence)));
            remembered[kind] = study::defaultAnswers(kind);
        }
        title = new QLabel;
        QFont strong = title->font();
        strong.setBold(true);
        title->setFont(strong);
        form = new AnswerForm;
        preview = new HookupView;
        preview->setFocusPolicy(Qt::NoFocus);
        preview->setAttribute(Qt::WA_TransparentForMouseEvents);
        preview->setAccessibleName(tr("Drawing of the circuit"));
        preview->setMinimumHeight(previewHeight);
        preview->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        preview->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        message = new QLabel;
        message->setObjectName(QStringLiteral("message"));
        message->setWordWrap(true);
        message->setTextFormat(Qt::PlainText);
        buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
        buttons->button(QDialogButtonBox::Ok)->setText(tr("&Make it"));
        buttons->button(QDialogButtonBox::Ok)
            ->setWhatsThis(
                tr("Opens the circuit that is drawn above as a new one, in place of what is open."));
        layOut();
        connect(kinds, &QListWidget::currentRowChanged, &q,
                [this](int row) { showKind(study::allReadyKinds[row]); });
        connect(kinds, &QListWidget::itemActivated, &q, [this] { q.accept(); });
        connect(form, &AnswerForm::changed, &q, [this] {
            remembered[form->answers().kind] = form->answers();
            ask();
        });
        connect(buttons, &QDialogButtonBox::accepted, &q, &ReadyDialog::accept);
        connect(buttons, &QDialogButtonBox::rejected, &q, &QDialog::reject);
    }

    void layOut() {
        auto* right = new QVBoxLayout;
        right->addWidget(title);
        right->addWidget(form);
        right->addWidget(message);
        right->addWidget(preview, 1);
        auto* columns = new QHBoxLayout;
        columns->addWidget(kinds);
        columns->addSpacing(6);
        columns->addLayout(right, 1);
        auto* whole = new QVBoxLayout(&q);
        whole->addLayout(columns, 1);
        whole->addWidget(buttons);
    }

    void showKind(ReadyKind kind) {
        const study::ReadyInfo& about = study::info(kind);
        title->setText(said(about.title));
        form->setAnswers(remembered[kind]);
        ask();
    }

    /// Makes the circuit off the event loop; an answer to an older question is dropped.
    void ask() {
        const int question = ++m_question;
        ready = false;
        m_pool.clear();
        m_pool.start([this, question, answers = form->answers()] {
            auto made = std::make_shared<Result<circuit::Circuit>>(study::makeReady(answers));
            QMetaObject::invokeMethod(
                &q, [this, question, made] { show(question, *made); }, Qt::QueuedConnection);
        });
    }

    void show(int question, const Result<circuit::Circuit>& made) {
        if (question != m_question) return;
        ready = made.ok();
        message->setText(made ? QString() : sentenceOf(made.fault()));
        buttons->button(QDialogButtonBox::Ok)->setEnabled(ready);
        circuit = ready ? made.value() : circuit::Circuit();
        preview->setCircuit(circuit);
        preview->fit();
        const bool wanted = std::exchange(acceptWhenReady, false);
        if (wanted && ready) q.accept();
    }

    static QString tr(const char* text) { return ReadyDialog::tr(text); }

    ReadyDialog& q;
    QListWidget* kinds = nullptr;
    QLabel *title = nullptr, *message = nullptr;
    AnswerForm* form = nullptr;
    HookupView* preview = nullptr;
    QDialogButtonBox* buttons = nullptr;
    std::map<ReadyKind, ReadyAnswers> remembered;
    circuit::Circuit circuit;
    bool ready = false, acceptWhenReady = false;

  private:
    int m_question = 0;
    QThreadPool m_pool; // the last member: it waits for its work before the rest goes
};

ReadyDialog::ReadyDialog(const Theme& theme, QWidget* parent)
    : QDialog(parent), d(std::make_unique<Private>(*this)) {
    setObjectName(QStringLiteral("readyDialog"));
    setWindowTitle(tr("New from a ready blinker"));
    d->make();
    setTheme(theme);
    resize(withText(*this, firstSize));
    d->kinds->setCurrentRow(0);
}

ReadyDialog::~ReadyDialog() = default;

void ReadyDialog::setAnswers(const ReadyAnswers& answers) {
    d->remembered[answers.kind] = answers;
    if (d->kinds->currentRow() == static_cast<int>(answers.kind)) d->showKind(answers.kind);
}

ReadyAnswers ReadyDialog::answers() const {
    return d->form->answers();
}

std::vector<ReadyAnswers> ReadyDialog::allAnswers() const {
    std::vector<ReadyAnswers> all;
    for (const auto& [kind, answers] : d->remembered) all.push_back(answers);
    return all;
}

void ReadyDialog::choose(ReadyKind kind) {
    d->kinds->setCurrentRow(static_cast<int>(kind));
}

void ReadyDialog::setTheme(const Theme& theme) {
    d->preview->setTheme(theme);
    d->form->setTheme(theme);
    QPalette warning = d->message->palette();
    warning.setColor(QPalette::WindowText, theme.fault);
    d->message->setPalette(warning);
}

const circuit::Circuit& ReadyDialog::circuit() const {
    return d->circuit;
}

bool ReadyDialog::isReady() const {
    return d->ready;
}

QString ReadyDialog::message() const {
    return d->message->text();
}

void ReadyDialog::accept() {
    // Enter right after an answer: the circuit of that answer, not of the one before.
    if (!d->ready) {
        d->acceptWhenReady = d->message->text().isEmpty();
        return;
    }
    QDialog::accept();
}

} // namespace blinkwright::widgets
