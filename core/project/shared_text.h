// Text that copies of a project share.
#pragma once

#include <atomic>
#include <memory>
#include <string>
#include <string_view>
#include <utility>

namespace tenter::project {

/// UTF-8 text whose copies share their characters until one of them changes. Imported pages and long texts
/// would otherwise be copied with every undo step. Hands out no reference that can be written to, so a change
/// never reaches another copy. Reads like a `const std::string`.
class SharedText {
public:
    SharedText() = default;
    SharedText(std::string text) {
        if (!text.empty()) text_ = std::make_shared<std::string>(std::move(text));
    }
    SharedText(std::string_view text) : SharedText(std::string(text)) {}
    SharedText(const char* text) : SharedText(std::string(text)) {}

    [[nodiscard]] const std::string& str() const { return text_ ? *text_ : none(); }
    operator const std::string&() const { return str(); }
    operator std::string_view() const { return str(); }
    [[nodiscard]] bool empty() const { return text_ == nullptr; }
    [[nodiscard]] std::size_t size() const { return str().size(); }
    /// True if both are one piece of memory, or both empty. Equal texts need not be.
    [[nodiscard]] bool isSharedWith(const SharedText& other) const { return text_ == other.text_; }

    SharedText& operator+=(std::string_view more) {
        if (more.empty()) return *this;
        if (text_ == nullptr || text_.use_count() > 1) {
            text_ = std::make_shared<std::string>(str() + std::string(more));
        } else {
            // What the last other owner read, on whichever thread, comes before the change.
            std::atomic_thread_fence(std::memory_order_acquire);
            *text_ += more;
        }
        return *this;
    }
    SharedText& operator+=(char more) { return *this += std::string_view(&more, 1); }

    /// Compares addresses first.
    friend bool operator==(const SharedText& a, const SharedText& b) {
        return a.text_ == b.text_ || a.str() == b.str();
    }
    friend bool operator==(const SharedText& a, std::string_view b) { return a.str() == b; }
    friend bool operator==(const SharedText& a, const std::string& b) { return a.str() == b; }
    friend bool operator==(const SharedText& a, const char* b) { return a.str() == b; }

private:
    static const std::string& none() {
        static const std::string empty;
        return empty;
    }
    std::shared_ptr<std::string> text_;  // null: empty
};

}  // namespace tenter::project
