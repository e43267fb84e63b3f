// Printing blocks as a stylesheet.
#pragma once

#include <string>

#include "emit/band_changes.h"
#include "emit/stylesheet.h"

namespace tenter::emit {

/// Prints rules with an indent of two spaces and blank lines between them. A declaration that all variants of
/// a block share is printed once, under all their selectors.
class SheetWriter {
public:
    SheetWriter(const project::Project& project, const SheetForm& form) : project_(project), form_(form) {}

    void comment(const std::string& sentence);
    void write(const Block& block);
    /// Adds rules that are printed already; empty: nothing.
    void add(const std::string& rules);
    /// Puts what follows into the cascade layer `name`.
    void openLayer(const std::string& name);
    void closeLayer() { close(); }
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
    void writeDeclaration(const Declaration& declaration, bool isLast);
    void gap();
    [[nodiscard]] std::string selector(std::size_t variant, const Rule& rule) const;

    const project::Project& project_;
    SheetForm form_;
    std::string text_;
    int depth_ = 0;
    bool several_ = false;  ///< true if the stylesheet has several variants
    bool fresh_ = true;     ///< true after an opening brace: no blank line follows
};

}  // namespace tenter::emit
