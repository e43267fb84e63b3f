#include "project/differences/difference.h"

#include "project/differences/comparison.h"
#include "project/differences/setting_names.h"
#include "project/project_json.h"

namespace tenter::project {

std::string word(Difference::Kind kind) {
    switch (kind) {
        case Difference::Kind::Added:
            return "added";
        case Difference::Kind::Removed:
            return "removed";
        case Difference::Kind::Moved:
            return "moved";
        case Difference::Kind::Changed:
            break;
    }
    return "changed";
}

std::string placeOf(const std::string& list, std::size_t index) {
    return list + "/" + std::to_string(index);
}

void Comparison::value(const std::string& oldPlace, const std::string& newPlace, const std::string& name,
                       const Json& before, const Json& after) {
    if (before == after) return;
    const auto words = [](const Json& value) {
        return value.is_string() && value.get_ref<const std::string&>().empty() ? "nothing"
                                                                                : valueWords(value);
    };
    add({Difference::Kind::Changed, oldPlace, newPlace, before, after,
         name + " changes from " + words(before) + " to " + words(after) + "."});
}

void Comparison::compareProject() {
    value("/name", "Project › Name", before_.name, after_.name);
    value("/row", "Project › Class prefix", before_.row().name, after_.row().name);
    value("/language", "Project › Language", before_.language, after_.language);
    const auto direction = [](const Project& project) { return project.rightToLeft ? "rtl" : "ltr"; };
    value("/direction", "Project › Writing direction", direction(before_), direction(after_));
    value("/headingLevel", "Project › Heading level", before_.row().headingLevel, after_.row().headingLevel);
    const auto unit = [](const Project& project) { return project.unit == units::Unit::Px ? "px" : "rem"; };
    value("/unit", "Project › Size unit", unit(before_), unit(after_));
    value("/range/from", "Page › Smallest viewport", written(before_.leastWidth), written(after_.leastWidth));
    value("/range/to", "Page › Largest viewport", written(before_.mostWidth), written(after_.mostWidth));
}

void Comparison::compareStyle() {
    settings("/style", "/style", before_.row().style, after_.row().style, "in all variants");
}

void Comparison::compareChecks() {
    const auto silenceOf = [](const Project& project, const std::string& check) -> const Silence* {
        for (const Silence& silence : project.checking.silenced)
            if (silence.check == check) return &silence;
        return nullptr;
    };
    const auto titleOf = [this](const Silence& silence) { return quoted(titleOfCheck_(silence.check)); };
    const std::string list = "/checks/silenced";
    for (std::size_t i = 0; i < before_.checking.silenced.size(); ++i) {
        const Silence& silence = before_.checking.silenced[i];
        if (silenceOf(after_, silence.check) == nullptr)
            add({Difference::Kind::Removed, placeOf(list, i), "", written(silence), nullptr,
                 "The check " + titleOf(silence) + " is no longer silenced."});
    }
    for (std::size_t i = 0; i < after_.checking.silenced.size(); ++i) {
        const Silence& silence = after_.checking.silenced[i];
        const Silence* known = silenceOf(before_, silence.check);
        if (known == nullptr) {
            add({Difference::Kind::Added, "", placeOf(list, i), nullptr, written(silence),
                 "The check " + titleOf(silence) + " is now silenced; the reason is " +
                     quoted(silence.reason) + "."});
        } else {
            value(
                placeOf(list, static_cast<std::size_t>(known - before_.checking.silenced.data())) + "/reason",
                placeOf(list, i) + "/reason", "The reason for silencing the check " + titleOf(silence),
                known->reason, silence.reason);
        }
    }
    Limits::members([&](const char* key, auto member) {
        value(std::string("/checks/limits/") + key, std::string("The limit ") + key + " of the checks",
              written(before_.checking.limits.*member), written(after_.checking.limits.*member));
    });
}

void Comparison::compareGiven() {
    const std::optional<Given>& before = before_.row().given;
    const std::optional<Given>& after = after_.row().given;
    if (before.has_value() != after.has_value()) {
        if (before)
            add({Difference::Kind::Removed, "/given", "", written(*before), nullptr,
                 "The row no longer has the markup of an imported page."});
        else
            add({Difference::Kind::Added, "", "/given", nullptr, written(*after),
                 "The row now has the markup of an imported page."});
        return;
    }
    if (!before) return;
    const auto whole = [&](const char* key, const SharedText& old, const SharedText& fresh,
                           const std::string& says) {
        if (old == fresh) return;
        add({Difference::Kind::Changed, std::string("/given/") + key, std::string("/given/") + key,
             written(old.str()), written(fresh.str()), says});
    };
    whole("markup", before->markup, after->markup, "The markup of the imported row changes.");
    whole("theme", before->theme, after->theme, "The theme rules of the imported row change.");
    if (before->selectors != after->selectors)
        add({Difference::Kind::Changed, "/given/selectors", "/given/selectors", written(*before)["selectors"],
             written(*after)["selectors"], "The selectors of the imported row change."});
    value("/given/levelBefore", "The level of the heading before the imported row",
          before->levelBefore ? Json(*before->levelBefore) : Json(),
          after->levelBefore ? Json(*after->levelBefore) : Json());
}

std::vector<Difference> differences(const Project& before, const Project& after,
                                    const TitleOfCheck& titleOfCheck) {
    Comparison comparison(before, after, titleOfCheck);
    comparison.compareProject();
    comparison.comparePage();
    comparison.compareFonts();
    comparison.compareStyle();
    comparison.compareCards();
    comparison.compareVariants();
    comparison.compareWishes();
    comparison.compareChecks();
    comparison.compareGiven();
    return comparison.take();
}

}  // namespace tenter::project
