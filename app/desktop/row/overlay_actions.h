// The toggles for the overlays of the row view.
#pragma once

#include <QAction>
#include <QObject>

#include "row/overlays.h"

namespace tenter::desktop::row {

/// One toggle for each overlay: boxes and spacing, measure, tight fits, Chromium/Firefox differences.
class OverlayActions : public QObject {
    Q_OBJECT

public:
    explicit OverlayActions(QObject* parent);
    [[nodiscard]] QList<QAction*> all() const { return {boxes_, measure_, tight_, engines_}; }
    [[nodiscard]] bool anyIsOn() const;
    /// Paints the overlays that are switched on.
    void paint(OverlayTools& tools) const;

Q_SIGNALS:
    void changed();  ///< an overlay was switched on or off

private:
    QAction* addToggle(const QString& text, const QString& description, const QKeySequence& shortcut);
    QAction *boxes_, *measure_, *tight_, *engines_;
};

}  // namespace tenter::desktop::row
