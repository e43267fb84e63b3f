// Printing blocks as a stylesheet.
#pragma once

#include <string>

#include "emit/band_changes.h"

namespace tenter::emit {

/// Prints rules with an indent of two spaces and blank lines between them. A declaration that all variants of
/// a block share is printed once, under all their selectors.
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
    bool several_ = false;  ///< true if the stylesheet has several variants
    bool fresh_ = true;     ///< true after an opening brace: no blank line follows
};

}  // namespace tenter::emit
