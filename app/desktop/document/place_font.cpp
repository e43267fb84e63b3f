#include "document/place_font.h"

#include <hb-ot.h>
#include <hb.h>

#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <array>
#include <memory>

#include "document/collect_files.h"
#include "document/refusal.h"
#include "project/cascade.h"
#include "text/sfnt.h"

namespace tenter::desktop {

namespace {

struct Release {
    void operator()(hb_blob_t* blob) const { hb_blob_destroy(blob); }
    void operator()(hb_face_t* face) const { hb_face_destroy(face); }
    void operator()(hb_font_t* font) const { hb_font_destroy(font); }
};

std::string nameOf(hb_face_t* face, hb_ot_name_id_t id) {
    std::array<char, 256> text{};
    auto size = static_cast<unsigned>(text.size());
    hb_ot_name_get_utf8(face, id, hb_language_from_string("en", -1), &size, text.data());
    return {text.data()};
}

/// Family, weights and slant from the font's own tables. OpenType 1.9: name, fvar and OS/2.
project::FontEntry entryOf(hb_face_t* face) {
    project::FontEntry entry;
    entry.family = nameOf(face, HB_OT_NAME_ID_TYPOGRAPHIC_FAMILY);
    if (entry.family.empty()) entry.family = nameOf(face, HB_OT_NAME_ID_FONT_FAMILY);
    const std::unique_ptr<hb_font_t, Release> font(hb_font_create(face));
    entry.leastWeight = entry.mostWeight = hb_style_get_value(font.get(), HB_STYLE_TAG_WEIGHT);
    hb_ot_var_axis_info_t axis;
    if (hb_ot_var_find_axis_info(face, HB_OT_TAG_VAR_AXIS_WEIGHT, &axis)) {
        entry.leastWeight = axis.min_value;
        entry.mostWeight = axis.max_value;
    }
    if (hb_style_get_value(font.get(), HB_STYLE_TAG_ITALIC) > 0) entry.slant = project::Slant::Italic;
    return entry;
}

}  // namespace

bool isFontName(const QString& file) {
    const QString ending = QFileInfo(file).suffix().toLower();
    return ending == "ttf" || ending == "otf" || ending == "woff" || ending == "woff2";
}

QString placeFont(Document& document, const QString& file, const std::string& role) {
    const QString name = QFileInfo(file).fileName();
    QString unreadable =
        QObject::tr("%1: this file cannot be read as a font. Choose a TTF, OTF, WOFF or WOFF2 file.")
            .arg(name);
    QFile content(file);
    if (!content.open(QIODevice::ReadOnly)) return unreadable;
    const auto bytes = text::sfntBytes(content.readAll().toStdString());
    if (!bytes) return unreadable;
    const std::unique_ptr<hb_blob_t, Release> blob(hb_blob_create(
        bytes->data(), static_cast<unsigned>(bytes->size()), HB_MEMORY_MODE_READONLY, nullptr, nullptr));
    const std::unique_ptr<hb_face_t, Release> face(hb_face_create(blob.get(), 0));
    project::FontEntry entry = entryOf(face.get());
    if (entry.family.empty()) return unreadable;
    entry.file = storedPath(QFileInfo(file).absoluteFilePath().toStdString(), document.folder());
    const project::Problems problems = document.edit(
        QObject::tr("Add font %1").arg(QString::fromStdString(entry.family)), [&](project::Project& project) {
            const bool there =
                std::any_of(project.fonts.begin(), project.fonts.end(),
                            [&](const project::FontEntry& font) { return font.file == entry.file; });
            if (!there) project.fonts.push_back(entry);
            project::TextStyle& style = project.row().style.text.of(role);
            std::vector<std::string> families =
                style.family.value_or(project::defaultText(role).family.value_or(std::vector<std::string>{}));
            families.erase(std::remove(families.begin(), families.end(), entry.family), families.end());
            families.insert(families.begin(), entry.family);
            style.family = families;
        });
    return problems.empty() ? QString() : refusal(document.project(), problems.front());
}

}  // namespace tenter::desktop
