// The box for pasting a font size as CSS. It says what the size means, and previews it on the plot.
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
    /// Shows the box, empty.
    void open();
    /// Hides the box without applying the size.
    void cancel();
    /// Reads the pasted text again, because the role, the band or the row has changed.
    void refresh();

Q_SIGNALS:
    void closed();  ///< the box is hidden, whether the size was applied or not

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void read();
    void apply();
    [[nodiscard]] intake::SizeContext contextOf(project::Follow follow) const;

    Context& context_;
    QPlainTextEdit* text_;
    QLabel* meaning_;
    QPushButton* apply_;
    std::optional<intake::SizeReading> reading_;
};

/// The widths of the current band if an edit of the size of `role` changes that band only, else all widths of
/// the project, CSS px. For sizes that grow with the card: the widths of its content there.
struct ScopeWidths {
    double from = 320;
    double to = 1920;
};
ScopeWidths scopeWidths(const Session& session, const std::string& role, project::Follow follow);

}  // namespace tenter::desktop::panels
