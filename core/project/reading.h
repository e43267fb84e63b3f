// Where a reader is in a file, and what it found wrong.
#pragma once

#include <cstddef>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "project/problem.h"

namespace tenter::project {

class Reading {
public:
    Reading(std::string file, std::filesystem::path folder, Problems& problems)
        : file_(std::move(file)), folder_(std::move(folder)), problems_(problems), before_(problems.size()) {}

    /// Being inside a member or an element; over when it goes out of scope.
    class Step {
    public:
        Step(Reading& reading, std::string_view key);
        ~Step() { reading_.place_.resize(length_); }
        Step(const Step&) = delete;
        Step& operator=(const Step&) = delete;

    private:
        Reading& reading_;
        std::size_t length_;
    };
    [[nodiscard]] Step at(std::string_view key) { return {*this, key}; }
    [[nodiscard]] Step at(std::size_t index) { return {*this, std::to_string(index)}; }

    /// Notes a problem here; false, so that a reader can end with it. A file that is wrong throughout is not
    /// told of to its end.
    bool wrong(std::string what, std::string mend);
    /// The same at another place.
    bool wrongAt(std::string place, std::string what, std::string mend);

    /// JSON pointer, RFC 6901; empty for the whole file.
    [[nodiscard]] const std::string& place() const { return place_; }
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    /// From here on, a picture whose file is not there is no problem.
    void letPicturesBeElsewhere() { picturesElsewhere_ = true; }
    [[nodiscard]] bool picturesMayBeElsewhere() const { return picturesElsewhere_; }
    [[nodiscard]] bool isSound() const { return problems_.size() == before_; }

private:
    std::string file_;
    std::filesystem::path folder_;
    Problems& problems_;
    std::size_t before_;
    bool picturesElsewhere_ = false;
    std::string place_;
};

}  // namespace tenter::project
