// An editor of one setting's value.
#pragma once

#include <QWidget>
#include <nlohmann/json.hpp>

#include "project/members.h"

namespace tenter::desktop::controls {

using project::Json;

/// Shows a value as it is in a project file, and reports the person's changes to it.
class Editor : public QWidget {
    Q_OBJECT

public:
    explicit Editor(QWidget* parent = nullptr) : QWidget(parent) {}
    /// Shows `value`. Text being typed stays if it means the same.
    virtual void setValue(const Json& value) = 0;
    /// The edited value; always valid.
    [[nodiscard]] virtual Json value() const = 0;
    /// `value` in words, as the editor shows it.
    [[nodiscard]] virtual QString textOf(const Json& value) const;
    /// What can be entered, as a sentence; empty for any text.
    [[nodiscard]] virtual QString accepts() const { return {}; }
    /// The accessible name of the field.
    virtual void setName(const QString& name) = 0;
    /// Shows in the editor itself whether the value is set in the layer being edited.
    virtual void setMarked(bool) {}
    /// Enables reset in the editor's context menu, where the mark is shown beside the editor.
    virtual void setResettable(bool) {}

Q_SIGNALS:
    void edited();                      ///< value() has changed
    void finished();                    ///< the typing or the drag is over
    void reverted();                    ///< the value from before the typing must be restored
    void cleared();                     ///< the inherited value is wanted
    void rejected(const QString& why);  ///< the text is invalid; empty: it is no longer
};

}  // namespace tenter::desktop::controls
