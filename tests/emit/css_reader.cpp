#include "css_reader.h"

#include <algorithm>
#include <cstdlib>

namespace tenter::tests {

namespace {

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \n");
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(" \n") - first + 1);
}

class Reader {
public:
    explicit Reader(const std::string& text) : text_(text) {}

    CssSheet read() {
        block({});
        sheet_.sound = sheet_.sound && at_ == text_.size();
        return sheet_;
    }

private:
    /// Everything up to one of `stops` outside strings, comments left out.
    std::string until(const std::string& stops) {
        std::string out;
        while (at_ < text_.size() && stops.find(text_[at_]) == std::string::npos) {
            if (text_.compare(at_, 2, "/*") == 0) {
                comment();
            } else if (text_[at_] == '"') {
                out += string();
            } else {
                out += text_[at_++];
            }
        }
        return trimmed(out);
    }

    void comment() {
        const auto end = text_.find("*/", at_ + 2);
        if (end == std::string::npos) {
            sheet_.sound = false;
            at_ = text_.size();
            return;
        }
        sheet_.comments.push_back(trimmed(text_.substr(at_ + 2, end - at_ - 2)));
        at_ = end + 2;
    }

    std::string string() {
        std::string out(1, text_[at_++]);
        while (at_ < text_.size() && text_[at_] != '"') {
            if (text_[at_] == '\n') sheet_.sound = false;
            if (text_[at_] == '\\') out += text_[at_++];
            if (at_ < text_.size()) out += text_[at_++];
        }
        if (at_ >= text_.size()) {
            sheet_.sound = false;
            return out;
        }
        out += text_[at_++];
        return out;
    }

    void block(const std::vector<std::string>& media) {
        while (at_ < text_.size()) {
            const std::string prelude = until("{}");
            if (at_ >= text_.size() || text_[at_] == '}') {
                if (!prelude.empty()) sheet_.sound = false;
                return;
            }
            ++at_;
            if (prelude.starts_with("@media ")) {
                std::vector<std::string> inner = media;
                inner.push_back(prelude.substr(7));
                sheet_.queries.push_back(inner.back());
                block(inner);
            } else {
                rule(media, prelude);
            }
            if (at_ < text_.size() && text_[at_] == '}') {
                ++at_;
            } else {
                sheet_.sound = false;
            }
        }
    }

    void rule(const std::vector<std::string>& media, const std::string& prelude) {
        CssRule rule{media, {}, {}};
        std::string rest = prelude + ",";
        for (std::size_t comma = rest.find(','); comma != std::string::npos; comma = rest.find(',')) {
            rule.selectors.push_back(trimmed(rest.substr(0, comma)));
            rest.erase(0, comma + 1);
        }
        while (at_ < text_.size() && text_[at_] != '}') {
            const std::string name = until(":}");
            if (at_ >= text_.size() || text_[at_] == '}') break;
            ++at_;
            rule.declarations.emplace_back(name, until(";}"));
            if (at_ < text_.size() && text_[at_] == ';') ++at_;
        }
        sheet_.rules.push_back(std::move(rule));
    }

    const std::string& text_;
    std::size_t at_ = 0;
    CssSheet sheet_;
};

/// Media Queries 4 § 4.1: max-width includes its own value.
bool holds(const std::string& query, double width) {
    const std::string prefix = "(max-width: ";
    if (!query.starts_with(prefix)) return false;
    return width <= std::strtod(query.c_str() + prefix.size(), nullptr);
}

}  // namespace

CssSheet readCss(const std::string& text) {
    return Reader(text).read();
}

std::map<std::string, std::string> computed(const CssSheet& sheet, const std::string& selector,
                                            double width) {
    std::map<std::string, std::string> out;
    for (const CssRule& rule : sheet.rules) {
        const bool held =
            std::ranges::all_of(rule.media, [&](const std::string& query) { return holds(query, width); });
        if (!held || std::ranges::find(rule.selectors, selector) == rule.selectors.end()) continue;
        for (const auto& [name, value] : rule.declarations)
            out[name] = value;
    }
    return out;
}

}  // namespace tenter::tests
