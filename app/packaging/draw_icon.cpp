// Draws the icon, an SVG file, as PNG files in the sizes of an icon theme. Runs at build time, so that the
// SVG file is the only source of the icon and no converter is needed. Reads what the icon consists of: `g`,
// `rect` and `path` with straight absolute segments, filled or stroked with colours. Everything else is an
// error, never left out. usage: draw-icon ICON.svg FOLDER SIZE...     writes FOLDER/SIZE.png
#include <cairo.h>
#include <gumbo.h>

#include <charconv>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <numbers>
#include <optional>
#include <sstream>
#include <stdexcept>
#include <string>

namespace {

/// What children inherit: colours as `#rrggbb`; empty: none.
struct Paint {
    std::string fill = "#000000";
    std::string stroke;
    double strokeWidth = 1;
};

[[noreturn]] void fail(const std::string& what) {
    throw std::runtime_error(what);
}

std::optional<std::string> attribute(const GumboElement& element, const char* name) {
    const GumboAttribute* found = gumbo_get_attribute(&element.attributes, name);
    return found == nullptr ? std::nullopt : std::optional<std::string>(found->value);
}

double number(const GumboElement& element, const char* name) {
    const std::string text = attribute(element, name).value_or("0");
    double value = 0;
    const auto [rest, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || rest != text.data() + text.size())
        fail(std::string(name) + " is not a number: " + text);
    return value;
}

std::string colour(const std::string& text) {
    if (text == "none") return "";
    if (text.size() != 7 || text[0] != '#') fail("not a colour of the form #rrggbb: " + text);
    return text;
}

Paint inherited(const GumboElement& element, Paint paint) {
    if (const auto fill = attribute(element, "fill")) paint.fill = colour(*fill);
    if (const auto stroke = attribute(element, "stroke")) paint.stroke = colour(*stroke);
    if (attribute(element, "stroke-width")) paint.strokeWidth = number(element, "stroke-width");
    return paint;
}

void setSource(cairo_t* cairo, const std::string& hex) {
    const auto channel = [&](std::size_t at) { return std::stoi(hex.substr(at, 2), nullptr, 16) / 255.0; };
    cairo_set_source_rgb(cairo, channel(1), channel(3), channel(5));
}

void draw(cairo_t* cairo, const Paint& paint) {
    if (!paint.fill.empty()) {
        setSource(cairo, paint.fill);
        cairo_fill_preserve(cairo);
    }
    if (!paint.stroke.empty()) {
        setSource(cairo, paint.stroke);
        cairo_set_line_width(cairo, paint.strokeWidth);
        cairo_stroke_preserve(cairo);
    }
    cairo_new_path(cairo);
}

void traceRect(cairo_t* cairo, const GumboElement& element) {
    const double x = number(element, "x");
    const double y = number(element, "y");
    const double width = number(element, "width");
    const double height = number(element, "height");
    const double radius = number(element, "rx");
    if (radius == 0) {
        cairo_rectangle(cairo, x, y, width, height);
        return;
    }
    constexpr double quarter = std::numbers::pi / 2;
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, x + width - radius, y + radius, radius, -quarter, 0);
    cairo_arc(cairo, x + width - radius, y + height - radius, radius, 0, quarter);
    cairo_arc(cairo, x + radius, y + height - radius, radius, quarter, 2 * quarter);
    cairo_arc(cairo, x + radius, y + radius, radius, 2 * quarter, 3 * quarter);
    cairo_close_path(cairo);
}

/// SVG 2 § 9.3: the commands M, L, H and V with absolute coordinates, each with its letter.
void tracePath(cairo_t* cairo, const GumboElement& element) {
    std::istringstream data(attribute(element, "d").value_or(""));
    double x = 0;
    double y = 0;
    for (char command = 0; data >> command;) {
        bool sound = true;
        if (command == 'M' || command == 'L') {
            sound = static_cast<bool>(data >> x >> y);
        } else if (command == 'H') {
            sound = static_cast<bool>(data >> x);
        } else if (command == 'V') {
            sound = static_cast<bool>(data >> y);
        } else {
            sound = false;
        }
        if (!sound) fail("cannot read this path: " + data.str());
        command == 'M' ? cairo_move_to(cairo, x, y) : cairo_line_to(cairo, x, y);
    }
}

void drawChildren(cairo_t* cairo, const GumboElement& parent, const Paint& outer) {
    for (unsigned i = 0; i < parent.children.length; ++i) {
        const auto* node = static_cast<const GumboNode*>(parent.children.data[i]);
        if (node->type != GUMBO_NODE_ELEMENT) continue;
        const GumboElement& element = node->v.element;
        const std::string name(element.original_tag.data + 1,
                               std::strcspn(element.original_tag.data + 1, " \t\n/>"));
        const Paint paint = inherited(element, outer);
        if (name == "g") {
            drawChildren(cairo, element, paint);
            continue;
        }
        if (name == "rect") {
            traceRect(cairo, element);
        } else if (name == "path") {
            tracePath(cairo, element);
        } else {
            fail("cannot draw the element " + name);
        }
        draw(cairo, paint);
    }
}

const GumboElement& svgIn(const GumboNode* node) {
    if (node->type != GUMBO_NODE_ELEMENT) fail("there is no svg element");
    const GumboElement& element = node->v.element;
    if (element.tag == GUMBO_TAG_SVG) return element;
    for (unsigned i = 0; i < element.children.length; ++i) {
        const auto* child = static_cast<const GumboNode*>(element.children.data[i]);
        if (child->type == GUMBO_NODE_ELEMENT && child->v.element.tag != GUMBO_TAG_HEAD) return svgIn(child);
    }
    fail("there is no svg element");
}

void drawIcon(const GumboElement& svg, int size, const std::string& file) {
    cairo_surface_t* surface = cairo_image_surface_create(CAIRO_FORMAT_ARGB32, size, size);
    cairo_t* cairo = cairo_create(surface);
    cairo_scale(cairo, size / number(svg, "width"), size / number(svg, "height"));
    drawChildren(cairo, svg, inherited(svg, {}));
    const cairo_status_t written = cairo_surface_write_to_png(surface, file.c_str());
    cairo_destroy(cairo);
    cairo_surface_destroy(surface);
    if (written != CAIRO_STATUS_SUCCESS) fail(file + ": " + cairo_status_to_string(written));
}

}  // namespace

int main(int argc, char** argv) {
    try {
        if (argc < 4) fail("usage: draw-icon ICON.svg FOLDER SIZE...");
        std::ifstream stream(argv[1], std::ios::binary);
        const std::string text{std::istreambuf_iterator<char>(stream), {}};
        if (text.empty()) fail(std::string(argv[1]) + " cannot be read");
        GumboOutput* parsed = gumbo_parse_with_options(&kGumboDefaultOptions, text.data(), text.size());
        std::filesystem::create_directories(argv[2]);
        for (int i = 3; i < argc; ++i)
            drawIcon(svgIn(parsed->root), std::stoi(argv[i]), std::string(argv[2]) + "/" + argv[i] + ".png");
        gumbo_destroy_output(&kGumboDefaultOptions, parsed);
    } catch (const std::exception& error) {
        fprintf(stderr, "draw-icon: %s\n", error.what());
        return 2;
    }
    return 0;
}
