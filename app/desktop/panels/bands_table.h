// The bands of the variant: their breakpoints and column counts.
#pragma once

#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <vector>

#include "controls/number_editors.h"
#include "panels/target.h"

namespace tenter::desktop::panels {

class BandsTable : public QWidget {
    Q_OBJECT

public:
    explicit BandsTable(Context& context, QWidget* parent = nullptr);
    void refresh();
    /// Updates what depends on the viewport width: the width at which the button adds a breakpoint.
    void refreshWidth();
    [[nodiscard]] QWidget* addButton() const { return add_; }

private:
    struct Line;
    void build(std::size_t count);
    void setColumns(std::size_t band, int columns);
    void moveBreakpoint(std::size_t band, double width);
    void addBreakpoint();
    void removeBand(std::size_t band);

    Context& context_;
    QVBoxLayout* lines_;
    QPushButton* add_;
    std::vector<Line*> built_;
};

}  // namespace tenter::desktop::panels
