// The open document, the state of the window that is not saved, and the checks of the row.
#pragma once

#include "document/document.h"
#include "session/check_runner.h"
#include "session/edit_scope.h"
#include "session/layout_cache.h"
#include "session/plot_annotations.h"
#include "session/selection_model.h"
#include "session/shown_project.h"
#include "session/view_state.h"

namespace tenter::desktop {

/// Each object uses only those before it. Each is up to date whenever it is read: it compares itself with
/// what it depends on, so no result depends on which slot of a signal runs first. A session must outlive the
/// widgets that use it.
struct Session {
    Document document;
    ShownProject shown{document};
    ViewState view{document, shown};
    SelectionModel selection{document, shown};
    EditScope scope{document, view, selection};
    PlotAnnotations plot;
    LayoutCache layouts{document, shown, view};
    CheckRunner checks{document, shown, view, selection, layouts};
};

}  // namespace tenter::desktop
