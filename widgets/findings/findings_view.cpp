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

    void show(std::vector<study::Finding> fresh) {
        std::stable_sort(fresh.begin(), fresh.end(),
                         [](const auto& a, const auto& b) { return a.severity < b.severity; });
        if (std::equal(fresh.begin(), fresh.end(), findings.begin(), findings.end(), same)) return;
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
            if (k >= findings.size() || !same(findings[k], fresh[k])) {
                if (k < findings.size() && findings[k].kind != fresh[k].kind) rows[k]->setExpanded(false);
                rows[k]->setFinding(fresh[k]);
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
    std::vector<study::Finding> findings;
};

FindingsView::FindingsView(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(this)) {
}
FindingsView::~FindingsView() = default;

void FindingsView::setFindings(const std::vector<study::Finding>& findings) {
    d->show(findings);
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
