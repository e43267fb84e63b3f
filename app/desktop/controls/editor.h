// An editor of one setting's value.
#pragma once

#include <QWidget>
#include <nlohmann/json.hpp>

#include "project/described.h"

namespace tenter::desktop::controls {

using project::Json;

/// Shows a value as a project file would hold it and says when the person changed it.
class Editor : public QWidget {
    Q_OBJECT

public:
    explicit Editor(QWidget* parent = nullptr) : QWidget(parent) {}
    /// Shows `value`; what is being typed stays if it means the same.
    virtual void setValue(const Json& value) = 0;
    /// The value as edited; in range.
    [[nodiscard]] virtual Json value() const = 0;
    /// The setting's name for assistive technology.
    virtual void setName(const QString& name) = 0;
    /// Whether the layer that is edited sets the value, shown in the editor itself.
    virtual void setMarked(bool) {}
    /// The same where it is shown beside the editor.
    virtual void setResettable(bool) {}

signals:
    void edited();                     ///< value() is new
    void finished();                   ///< the typing or the drag is over
    void takenBack();                  ///< what was there before the typing is wanted again
    void cleared();                    ///< nothing is to be said here: inherit
    void refused(const QString& why);  ///< what was typed could not be taken; empty: it can be now
};

}  // namespace tenter::desktop::controls
