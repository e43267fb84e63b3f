// Parsing HTML by Gumbo, with limits for memory and time.
#include <gumbo.h>
#include <sys/mman.h>

#include <algorithm>
#include <csetjmp>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <memory>

#include "markup/tree.h"
#include "project/utf8.h"
#include "units/number.h"

namespace tenter::markup {

namespace {

/// The largest memory of Gumbo for one page, in bytes.
constexpr std::size_t mostMemory = std::size_t{256} << 20U;

double processorSeconds() {
    std::timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

// The memory for Gumbo. Our own allocator frees a whole tree at once, where Gumbo would recurse into it. It
// can also abandon a page whose elements take quadratic time or memory, by a jump out of Gumbo; Gumbo is C
// and holds no other resources.
class Allowance {
public:
    Allowance(std::size_t bytes, double seconds) : bytes_(bytes), until_(processorSeconds() + seconds) {}

    // The target of the jump when the limits are reached.
    std::jmp_buf& exit() { return exit_; }

    static void* take(void* self, std::size_t size) { return static_cast<Allowance*>(self)->take(size); }
    static void give(void* self, void* memory) {
        if (memory != nullptr) static_cast<Allowance*>(self)->give(memory);
    }

private:
    // Each piece is preceded by its size class, by which freed pieces are reused: small sizes are multiples
    // of 16 bytes, larger ones powers of two.
    static constexpr std::size_t head = 8;
    static constexpr std::size_t step = 16;
    static constexpr std::size_t smallKinds = 32;
    static constexpr std::size_t kinds = smallKinds + 40;
    static constexpr std::size_t page = 2U << 20U;
    static constexpr std::size_t block = 4 * page;

    static std::size_t kindOf(std::size_t size) {
        if (size <= step * smallKinds) return size == 0 ? 0 : (size - 1) / step;
        std::size_t kind = smallKinds;
        while (sizeOf(kind) < size && kind + 1 < kinds)
            ++kind;
        return kind;
    }
    static std::size_t sizeOf(std::size_t kind) {
        return kind < smallKinds ? (kind + 1) * step : (2 * step * smallKinds) << (kind - smallKinds);
    }

    void* take(std::size_t size) {
        if (++taken_ % 4096 == 0 && processorSeconds() > until_) std::longjmp(exit_, 1);
        const std::size_t kind = kindOf(size);
        if (void* freed = freed_[kind]; freed != nullptr) {
            std::memcpy(&freed_[kind], freed, sizeof(void*));
            return freed;
        }
        const std::size_t wanted = sizeOf(kind) + head;
        if (wanted > left_) addBlock(wanted > block ? wanted : block);
        std::byte* piece = at_;
        at_ += wanted;
        left_ -= wanted;
        std::memcpy(piece, &kind, sizeof kind);
        return piece + head;
    }

    void addBlock(std::size_t size) {
        size = (size + page - 1) / page * page;
        if (size > bytes_) std::longjmp(exit_, 1);
        auto* memory = static_cast<std::byte*>(std::aligned_alloc(page, size));
        if (memory == nullptr) std::longjmp(exit_, 1);
        // Allocated in large pages, because many small allocations would take most of the time.
        madvise(memory, size, MADV_HUGEPAGE);
        blocks_.emplace_back(memory);
        bytes_ -= size;
        at_ = memory;
        left_ = size;
    }

    void give(void* memory) {
        std::size_t kind = 0;
        std::memcpy(&kind, static_cast<std::byte*>(memory) - head, sizeof kind);
        std::memcpy(memory, &freed_[kind], sizeof(void*));
        freed_[kind] = memory;
    }

    std::size_t bytes_;
    double until_;
    std::jmp_buf exit_{};
    struct Free {
        void operator()(std::byte* memory) const { std::free(memory); }
    };
    std::vector<std::unique_ptr<std::byte, Free>> blocks_;
    std::byte* at_ = nullptr;
    std::size_t left_ = 0;
    std::size_t taken_ = 0;
    void* freed_[kinds] = {};
};

// Null if the limits were reached. No object here needs a destructor when the jump happens.
GumboOutput* runGumbo(std::string_view html, Allowance& allowance) {
    GumboOptions options = kGumboDefaultOptions;
    // Columns count characters.
    options.tab_stop = 1;
    options.allocator = &Allowance::take;
    options.deallocator = &Allowance::give;
    options.userdata = &allowance;
    options.max_errors = 0;
    if (setjmp(allowance.exit()) != 0) return nullptr;  // NOLINT(cert-err52-cpp)
    return gumbo_parse_with_options(&options, html.data(), html.size());
}

std::string_view viewOf(const GumboStringPiece& piece) {
    return {piece.data, piece.length};
}

std::string nameOf(const GumboElement& element) {
    GumboStringPiece written = element.original_tag;
    if (written.data != nullptr) gumbo_tag_from_original_text(&written);
    if (element.tag_namespace == GUMBO_NAMESPACE_SVG && written.data != nullptr) {
        if (const char* name = gumbo_normalize_svg_tagname(&written); name != nullptr) return name;
    }
    if (element.tag != GUMBO_TAG_UNKNOWN) return gumbo_normalized_tagname(element.tag);
    std::string name(written.data != nullptr ? viewOf(written) : "unknown");
    for (char& c : name)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return name;
}

std::vector<Attribute> attributesOf(const GumboElement& element) {
    std::vector<Attribute> attributes;
    attributes.reserve(element.attributes.length);
    for (unsigned i = 0; i < element.attributes.length; ++i) {
        const auto* attribute = static_cast<const GumboAttribute*>(element.attributes.data[i]);
        static constexpr const char* prefixes[] = {"", "xlink:", "xml:", "xmlns:"};
        const bool isPrefix = attribute->attr_namespace == GUMBO_ATTR_NAMESPACE_XMLNS &&
                              std::strcmp(attribute->name, "xmlns") == 0;
        attributes.push_back(
            {isPrefix ? "xmlns" : std::string(prefixes[attribute->attr_namespace]) + attribute->name,
             attribute->value});
    }
    return attributes;
}

Space spaceOf(const GumboElement& element) {
    if (element.tag_namespace == GUMBO_NAMESPACE_SVG) return Space::Svg;
    return element.tag_namespace == GUMBO_NAMESPACE_MATHML ? Space::MathMl : Space::Html;
}

// A Gumbo node whose children are being copied, our node for them, and the index of the next child.
struct Copying {
    const GumboVector* children;
    NodeId to;
    unsigned next = 0;
};

// Adds a text with its place in the source.
void addPlaced(Tree& tree, NodeId parent, const GumboText& text) {
    tree.addText(parent, text.text);
    Node& added = tree[tree[parent].lastChild];
    if (added.line > 0) return;
    added.line = text.start_pos.line;
    added.column = text.start_pos.column;
}

Tree copied(const GumboNode* root) {
    Tree tree;
    const auto add = [&tree](const GumboNode* node, NodeId parent) {
        const GumboElement& element = node->v.element;
        return tree.addElement(parent, nameOf(element), spaceOf(element), attributesOf(element));
    };
    std::vector<Copying> open{{&root->v.element.children, add(root, noNode)}};
    while (!open.empty()) {
        Copying& top = open.back();
        if (top.next == top.children->length) {
            open.pop_back();
            continue;
        }
        const auto* child = static_cast<const GumboNode*>(top.children->data[top.next++]);
        switch (child->type) {
            case GUMBO_NODE_ELEMENT:
            case GUMBO_NODE_TEMPLATE:
                open.push_back({&child->v.element.children, add(child, top.to)});
                break;
            case GUMBO_NODE_TEXT:
            case GUMBO_NODE_WHITESPACE:
            case GUMBO_NODE_CDATA:
                addPlaced(tree, top.to, child->v.text);
                break;
            case GUMBO_NODE_COMMENT:
            case GUMBO_NODE_DOCUMENT:
                break;
        }
    }
    return tree;
}

// Well-formed UTF-8 without NUL, which ends Gumbo's strings.
std::string withoutBadBytes(std::string_view html) {
    std::string sound;
    sound.reserve(html.size());
    for (std::size_t at = 0; at < html.size();) {
        const project::Decoded decoded = project::decode(html, at);
        if (decoded.valid && decoded.character != 0) {
            sound += html.substr(at, decoded.length);
        } else {
            sound += "\xEF\xBF\xBD";
        }
        at += decoded.length;
    }
    return sound;
}

}  // namespace

std::optional<Tree> parse(std::string_view html, const std::string& file, project::Problems& problems,
                          double seconds) {
    if (html.size() > largestPage) {
        problems.push_back({file, "",
                            "The page is larger than " + std::to_string(largestPage >> 20U) + " MB.",
                            "Paste only the row."});
        return std::nullopt;
    }
    std::string repaired;
    if (project::firstBadByte(html) || html.find('\0') != std::string_view::npos) {
        repaired = withoutBadBytes(html);
        html = repaired;
    }
    Allowance allowance(std::min(html.size() * 64 + (std::size_t{64} << 20U), mostMemory), seconds);
    const GumboOutput* output = runGumbo(html, allowance);
    if (output == nullptr || output->root == nullptr) {
        problems.push_back({file, "",
                            "The page has too many or too deeply nested elements to be parsed in " +
                                units::number(seconds) + "\u00A0s.",
                            "Paste only the row, and close every element."});
        return std::nullopt;
    }
    return copied(output->root);
}

}  // namespace tenter::markup
