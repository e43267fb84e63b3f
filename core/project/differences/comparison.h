// Collecting the differences of two projects.
#pragma once

#include "project/differences/difference.h"

namespace tenter::project {

/// The differences found so far.
class Comparison {
public:
    Comparison(const Project& before, const Project& after, const TitleOfCheck& titleOfCheck)
        : before_(before), after_(after), titleOfCheck_(titleOfCheck) {}

    void compareProject();
    void comparePage();
    void compareFonts();
    void compareStyle();
    void compareCards();
    void compareVariants();
    void compareWishes();
    void compareChecks();
    void compareGiven();
    [[nodiscard]] std::vector<Difference> take() { return std::move(found_); }

private:
    void add(Difference difference) { found_.push_back(std::move(difference)); }
    /// A value at the same place in both files. `name` starts a sentence: `Page › Theme root size`.
    void value(const std::string& place, const std::string& name, const Json& before, const Json& after) {
        value(place, place, name, before, after);
    }
    void value(const std::string& oldPlace, const std::string& newPlace, const std::string& name,
               const Json& before, const Json& after);
    /// One layer of the cascade. `scope` ends a sentence: `in all variants`.
    void settings(const std::string& oldPlace, const std::string& newPlace, const Settings& before,
                  const Settings& after, const std::string& scope);
    void part(std::size_t oldCard, std::size_t newCard, std::size_t oldPart, std::size_t newPart);
    void picture(const std::string& oldPlace, const std::string& newPlace, const std::string& name,
                 const PicturePart& before, const PicturePart& after);
    void text(const std::string& oldPlace, const std::string& newPlace, const std::string& name,
              const TextPart& before, const TextPart& after);
    void parts(std::size_t oldCard, std::size_t newCard);
    void variant(std::size_t oldIndex, std::size_t newIndex);
    void ranges();

    const Project& before_;
    const Project& after_;
    const TitleOfCheck& titleOfCheck_;
    std::vector<Difference> found_;
};

/// `/cards/3`.
std::string placeOf(const std::string& list, std::size_t index);

}  // namespace tenter::project
