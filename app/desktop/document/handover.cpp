#include "document/handover.h"

#include <QObject>

#include "emit/class_names.h"
#include "emit/follow.h"
#include "emit/late_fonts.h"
#include "emit/page.h"
#include "emit/saved_page.h"
#include "emit/stylesheet.h"
#include "emit/usage.h"
#include "project/file_bytes.h"

namespace tenter::desktop {

std::optional<std::string> stylesheetOf(const project::Project& project,
                                        const std::vector<std::size_t>& variants,
                                        project::Problems& problems) {
    emit::StylesheetOptions options;
    options.variants = variants;
    options.unit = project.unit;
    if (project.row().given) return emit::givenStylesheet(project, options, problems);
    return emit::stylesheet(project, options);
}

project::Project followingChoice(const project::Project& project, const std::vector<std::size_t>& variants,
                                 const SheetChoice& choice, text::ParagraphStore& store,
                                 project::Problems& problems) {
    if (!choice.follow) return project;
    return emit::following(project, *choice.follow, variants, store, text::defaultProfile(), problems);
}

std::optional<std::string> stylesheetOf(const project::Project& project,
                                        const std::vector<std::size_t>& variants, const SheetChoice& choice,
                                        text::ParagraphStore& store, project::Problems& problems,
                                        QStringList* notes) {
    project::Project chosen = followingChoice(project, variants, choice, store, problems);
    emit::StylesheetOptions options;
    options.variants = variants;
    options.unit = choice.unit;
    options.form = choice.form;
    if (choice.lateFonts) {
        const emit::LateFonts late = emit::lateFonts(chosen, variants, store);
        if (notes != nullptr)
            for (const std::string& sentence : emit::lateFontSentences(late))
                *notes << QString::fromStdString(sentence);
        options.fontRules = emit::lateFontRules(late, choice.form.comments, choice.form.minified);
        chosen = late.project;
    }
    if (chosen.row().given) return emit::givenStylesheet(chosen, options, problems);
    return emit::stylesheet(chosen, options);
}

std::string markupOf(const project::Project& project, std::size_t variant) {
    return emit::markup(project, variant);
}

std::string classesOf(const project::Project& project, std::size_t variant) {
    return emit::classLine(project, variant);
}

std::string fontSizeOf(const project::Project& project, std::size_t variant, double width,
                       const std::string& role) {
    return emit::fontSize(project, variant, width, role);
}

std::string pageOf(const project::Project& project, std::size_t variant, const std::filesystem::path& folder,
                   text::ParagraphStore& store, project::Problems& problems) {
    return emit::page(project, variant, folder, store, problems);
}

std::string savedPageWithStylesheet(const project::Project& project, std::size_t variant,
                                    const std::filesystem::path& folder,
                                    const std::filesystem::path& savedPage, text::ParagraphStore& store,
                                    project::Problems& problems) {
    const std::optional<std::string> bytes = project::fileBytes(savedPage, 64U << 20U);
    if (!bytes) {
        problems.push_back(
            {savedPage.string(), "", QObject::tr("the saved page cannot be read").toStdString(),
             QObject::tr("check that the file still exists and that you may read it").toStdString()});
        return {};
    }
    return emit::savedPageWithStylesheet(project, variant, folder, {*bytes, savedPage}, store, problems);
}

project::Project sizesByPageWidth(const project::Project& project, text::ParagraphStore& store,
                                  const text::BreakProfile& profile, project::Problems& problems) {
    return emit::following(project, project::Follow::Viewport, project::everyVariant(project), store, profile,
                           problems);
}

bool containsLinks(const project::Project& project, const std::string& role) {
    for (const emit::RoleUse& use : emit::roleUses(project))
        if (use.role == role) return use.wholeLink || use.linkRuns;
    return false;
}

}  // namespace tenter::desktop
