// A font size pasted as CSS: what it means in words, drawn on the plot of sizes before it is taken.
#pragma once

#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include "intake/size_reading.h"
#include "panels/target.h"

namespace tenter::desktop::panels {

class SizePaste : public QWidget {
    Q_OBJECT

public:
    explicit SizePaste(Context& context, QWidget* parent = nullptr);
    /// Shows the box, emptied.
    void open();
    /// Hides it; nothing is taken.
    void leave();
    /// Reads what stands there anew: the role, the band or the row is another one.
    void refresh();

signals:
    void left();  ///< the box is shut, whether a size was taken or not

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void read();
    void take();
    [[nodiscard]] intake::SizeContext contextOf(project::Follow follow) const;

    Context& context_;
    QPlainTextEdit* text_;
    QLabel* says_;
    QPushButton* take_;
    std::optional<intake::SizeReading> reading_;
};

/// The widths of the band in view if edits go to it, else all of the project's, CSS px; for sizes that follow
/// the card, its content widths there.
struct ScopeWidths {
    double from = 320;
    double to = 1920;
};
ScopeWidths scopeWidths(const Viewing& viewing, project::Follow follow);

}  // namespace tenter::desktop::panels
