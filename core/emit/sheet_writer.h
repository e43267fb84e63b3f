// Blocks printed as a stylesheet.
#pragma once

#include <string>

#include "emit/band_changes.h"

namespace tenter::emit {

/// Prints rules two spaces deep, blank lines between them. What all variants of a block say alike is said
/// once, under all their selectors.
class SheetWriter {
public:
    explicit SheetWriter(const project::Project& project) : project_(project) {}

    void comment(const std::string& sentence);
    void write(const Block& block);
    [[nodiscard]] const std::string& text() const { return text_; }

private:
    void writeWhen(const Block& block, When when);
    void writeShared(const Block& block, When when);
    void writeOwn(const Block& block, const VariantRules& variant, When when);
    void writeRule(const std::vector<std::size_t>& variants, const Rule& rule,
                   const std::vector<Declaration>& declarations);
    void open(const std::string& line);
    void close();
    void line(const std::string& content);
    void gap();
    [[nodiscard]] std::string selector(std::size_t variant, const Rule& rule) const;

    const project::Project& project_;
    std::string text_;
    int depth_ = 0;
    bool several_ = false;  ///< variants in the stylesheet
    bool fresh_ = true;     ///< nothing since the last opening: no blank line
};

}  // namespace tenter::emit
