// The layer of the cascade that edits of settings change: all variants, this variant or this band.
#pragma once

#include <QObject>

#include "project/cascade.h"
#include "session/selection_model.h"
#include "session/view_state.h"

namespace tenter::desktop {

class EditScope : public QObject {
    Q_OBJECT

public:
    EditScope(Document& document, const ViewState& view, const SelectionModel& selection,
              QObject* parent = nullptr);

    /// All variants in a project that was just opened.
    [[nodiscard]] project::CascadeLayer layer() const;
    void setLayer(project::CascadeLayer layer);
    /// The layer in which an edit changes the setting at `path`: `layer()`, or a more specific one that sets
    /// the value at the current width, because otherwise the edit would have no effect there.
    [[nodiscard]] project::CascadeLayer layerOf(const std::string& path) const;

    /// Changes one setting (`path` as in project::setSetting) in its layer; null removes it. A setting of a
    /// role that is one of several selected roles is changed for all of them. `name` is the
    /// name of the undo step. Returns problems and changes nothing if the value is not allowed.
    project::Problems setSetting(const QString& name, const std::string& path, const project::Json& value,
                                 const QString& gesture = {});
    /// Document::edit for a view that has no place for messages: emits `refused` if the edit is refused. True
    /// if it is not.
    bool edit(const QString& name, const std::function<void(project::Project&)>& change,
              const QString& gesture = {});

Q_SIGNALS:
    void changed();                                   ///< `layer()` has changed
    void refused(const project::Problems& problems);  ///< an edit would have made the project invalid

private:
    void announce();

    [[nodiscard]] std::vector<std::string> pathsOf(const std::string& path) const;
    /// The current variant of `project`, and its band at the current width.
    [[nodiscard]] std::pair<std::size_t, std::size_t> variantAndBand(const project::Project& project) const;

    Document& document_;
    const ViewState& view_;
    const SelectionModel& selection_;
    mutable project::CascadeLayer layer_ = project::CascadeLayer::Style;
    mutable int opening_;
    project::CascadeLayer announced_ = project::CascadeLayer::Style;
};

}  // namespace tenter::desktop
