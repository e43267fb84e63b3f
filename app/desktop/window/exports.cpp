#include "window/exports.h"

#include <QClipboard>
#include <QGuiApplication>

#include "document/handover.h"
#include "document/wording.h"

namespace tenter::desktop::window {

void Exports::copyStylesheetOf(const std::vector<std::size_t>& variants) {
    project::Problems problems;
    const auto css = stylesheetOf(session_.document.project(), variants, problems);
    if (!css) {
        problems_.showProblems("The stylesheet was not copied. The imported row has these problems:",
                               problems);
        return;
    }
    QGuiApplication::clipboard()->setText(QString::fromStdString(*css));
    if (problems.empty())
        problems_.hide();
    else
        problems_.showProblems("The stylesheet was copied. The imported row has these problems:", problems);
    const auto& all = session_.document.project().row().variants;
    note_.showMessage(
        "Stylesheet copied: " + figure(static_cast<double>(css->size()) / 1000, 1) + "\u00A0kB, " +
        (variants.size() == 1 ? QString::fromStdString(all[variants[0]].className)
                              : QString("all %1 variants").arg(variants.size())) +
        (session_.document.project().row().given ? ", for the imported row" : "") +
        (session_.shown.isProposal() ? ", with the current sizes, not those of the preview" : ""));
}

void Exports::copySize() {
    const std::string css = fontSizeOf(session_.document.project(), session_.view.variant(),
                                       session_.view.width(), session_.selection.role());
    QGuiApplication::clipboard()->setText(QString::fromStdString(css));
    note_.showMessage(roleTitle(session_.selection.role()) +
                      " font size copied: " + QString::fromStdString(css));
}

}  // namespace tenter::desktop::window
