#include "document/handover.h"

#include "emit/stylesheet.h"

namespace tenter::desktop {

std::string stylesheetOf(const project::Project& project, std::size_t variant) {
    tenter::emit::StylesheetOptions options;
    options.variants = {variant};
    options.unit = project.unit;
    return tenter::emit::stylesheet(project, options);
}

std::string fontSizeOf(const project::Project& project, std::size_t variant, std::size_t band,
                       const std::string& role) {
    return tenter::emit::fontSize(project, variant, band, role);
}

}  // namespace tenter::desktop
