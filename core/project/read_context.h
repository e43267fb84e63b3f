// The context that readers of a project file share: the place they have reached and the problems so far.
#pragma once

#include <cstddef>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "project/file.h"
#include "project/problem.h"

namespace tenter::project {

class ReadContext {
public:
    ReadContext(std::string file, std::filesystem::path folder, Problems& problems,
                CheckNameTest checkNameTest = isWellFormedCheckName)
        : file_(std::move(file)),
          folder_(std::move(folder)),
          problems_(problems),
          before_(problems.size()),
          isCheckName_(checkNameTest) {}

    /// Makes the place that of a member or an element, for as long as the step is in scope.
    class Step {
    public:
        Step(ReadContext& context, std::string_view key);
        ~Step() { context_.place_.resize(length_); }
        Step(const Step&) = delete;
        Step& operator=(const Step&) = delete;

    private:
        ReadContext& context_;
        std::size_t length_;
    };
    [[nodiscard]] Step at(std::string_view key) { return {*this, key}; }
    [[nodiscard]] Step at(std::size_t index) { return {*this, std::to_string(index)}; }

    /// Adds a problem at the present place. Always returns false, so that a reader can return it. Problems
    /// after the hundredth are not added.
    bool wrong(std::string what, std::string fix);
    /// The same for another place, a JSON pointer.
    bool wrongAt(std::string place, std::string what, std::string fix);
    /// Adds the problem that the value here is not what it must be: `"columns" must be RULE; it is ACTUAL.`
    bool mustBe(const std::string& rule, const std::string& actual, std::string fix = {});

    /// JSON pointer, RFC 6901; empty for the whole file.
    [[nodiscard]] const std::string& place() const { return place_; }
    /// The value here as the subject of a sentence: `"columns"`, `An entry of "cards"` or `The file`.
    [[nodiscard]] std::string subject() const;
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    /// From here on a picture whose file does not exist is no problem.
    void allowMissingPictures() { missingPictures_ = true; }
    [[nodiscard]] bool mayMissPictures() const { return missingPictures_; }
    [[nodiscard]] bool isCheckName(std::string_view name) const { return isCheckName_(name); }
    /// True if no problem has been added since the context was made.
    [[nodiscard]] bool isSound() const { return problems_.size() == before_; }

private:
    std::string file_;
    std::filesystem::path folder_;
    Problems& problems_;
    std::size_t before_;
    CheckNameTest isCheckName_;
    bool missingPictures_ = false;
    std::string place_;
};

}  // namespace tenter::project
