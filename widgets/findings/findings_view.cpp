#include "widgets/findings/findings_view.h"

#include "widgets/findings/finding_row.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

namespace blinkwright::widgets {

namespace {
bool same(const study::Finding& a, const study::Finding& b) {
    return a.kind == b.kind && a.severity == b.severity && a.places == b.places && a.text == b.text &&
           a.remedy == b.remedy && a.source == b.source;
}
/// One finding on both sets, though the numbers in it may differ.
bool common(const study::Finding& a, const study::Finding& b) {
    return a.kind == b.kind && a.severity == b.severity && a.places == b.places;
}
struct Listed {
    study::Finding finding;
    QString set; ///< whose alone it is; empty for Set A's
};
} // namespace

class FindingsView::Private {
  public:
    explicit Private(FindingsView* view) : q(view), theme(Theme::of(Theme::Mode::light)) {
        scroll = new QScrollArea;
        scroll->setWidgetResizable(true);
        scroll->setFrameShape(QFrame::NoFrame);
        scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        scroll->setFocusPolicy(Qt::NoFocus);
        auto* inside = new QWidget;
        column = new QVBoxLayout(inside);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(0);
        none = new QLabel(FindingsView::tr("No findings."));
        none->setContentsMargins(10, 8, 10, 8);
        column->addWidget(none);
        column->addStretch(1);
        scroll->setWidget(inside);
        auto* layout = new QVBoxLayout(view);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(scroll);
        view->setAccessibleName(FindingsView::tr("Findings"));
    }

    std::vector<Listed> all() const {
        std::vector<Listed> out;
        for (const study::Finding& finding : first) out.push_back({finding, {}});
        for (const study::Finding& finding : second)
            if (std::none_of(first.begin(), first.end(),
                             [&](const study::Finding& own) { return common(own, finding); }))
                out.push_back({finding, name});
        std::stable_sort(out.begin(), out.end(), [](const Listed& a, const Listed& b) {
            return a.finding.severity < b.finding.severity;
        });
        return out;
    }

    void show() {
        std::vector<Listed> fresh = all();
        const auto sameListed = [](const Listed& a, const Listed& b) {
            return a.set == b.set && same(a.finding, b.finding);
        };
        if (std::equal(fresh.begin(), fresh.end(), findings.begin(), findings.end(), sameListed)) return;
        // Rows are used again, so that a number that follows a slider does not build the list anew.
        while (rows.size() > fresh.size()) {
            rows.back()->deleteLater();
            rows.back()->hide();
            column->removeWidget(rows.back());
            rows.pop_back();
        }
        while (rows.size() < fresh.size()) {
            auto* row = new FindingRow;
            row->setTheme(theme);
            QObject::connect(row, &FindingRow::placeActivated, q, &FindingsView::placeActivated);
            column->insertWidget(static_cast<int>(rows.size()) + 1, row);
            rows.push_back(row);
        }
        for (std::size_t k = 0; k < fresh.size(); ++k)
            if (k >= findings.size() || !sameListed(findings[k], fresh[k])) {
                if (k < findings.size() && findings[k].finding.kind != fresh[k].finding.kind)
                    rows[k]->setExpanded(false);
                rows[k]->setFinding(fresh[k].finding, fresh[k].set);
            }
        findings = std::move(fresh);
        none->setVisible(findings.empty());
    }

    FindingsView* q;
    Theme theme;
    QScrollArea* scroll;
    QVBoxLayout* column;
    QLabel* none;
    std::vector<FindingRow*> rows;
    std::vector<study::Finding> first, second;
    QString name;
    std::vector<Listed> findings;
};

FindingsView::FindingsView(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(this)) {
}
FindingsView::~FindingsView() = default;

void FindingsView::setFindings(const std::vector<study::Finding>& findings) {
    d->first = findings;
    d->show();
}

void FindingsView::setSecond(const std::vector<study::Finding>& findings, const QString& name) {
    d->second = name.isEmpty() ? std::vector<study::Finding>() : findings;
    d->name = name;
    d->show();
}

void FindingsView::setTheme(const Theme& theme) {
    d->theme = theme;
    QPalette p = theme.palette();
    p.setColor(QPalette::Window, theme.paper);
    setPalette(p);
    d->scroll->viewport()->setAutoFillBackground(true);
    QPalette quiet = p;
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    d->none->setPalette(quiet);
    for (FindingRow* row : d->rows) row->setTheme(theme);
}

} // namespace blinkwright::widgets
