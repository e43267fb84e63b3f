// Pictures that a drawing shows, decoded and cut to their slots.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <tuple>
#include <vector>

#include "pictures/image_library.h"

namespace tenter::draw {

/// A picture in the size of its slot: rows of RGBA, 8 bits a channel, sRGB, alpha not premultiplied.
struct CutPicture {
    int width = 0;
    int height = 0;
    bool opaque = true;
    std::vector<std::uint8_t> pixels;
};

/// A picture file in memory.
struct EncodedPicture {
    std::string type;  ///< `image/jpeg` or `image/png`
    std::string bytes;
};

/// A visible rectangle of a picture, px of its file.
struct Crop {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
};
/// The rectangle of a picture of `width` × `height` that is visible in a slot of another size; the focal
/// point is a share of the size (0 to 1). CSS Images 3 § 5.5, `object-fit: cover`.
Crop coverCrop(double width, double height, double slotWidth, double slotHeight, double focusX,
               double focusY);

/// Reads the pictures of a project. Keeps what it has cut, and the files that it has decoded within a limit
/// of memory.
class PictureSource {
public:
    /// `folder`: that of the project file.
    explicit PictureSource(std::filesystem::path folder) : folder_(std::move(folder)) {}

    /// The picture `file`, cropped to a slot of `width` × `height` px. Null if it cannot be read.
    const CutPicture* cut(const std::string& file, int width, int height, double focusX, double focusY);
    /// The picture as a file in the smaller form: JPEG if it is opaque, PNG if not. Null if it cannot be
    /// read.
    const EncodedPicture* encoded(const std::string& file, int width, int height, double focusX,
                                  double focusY);
    /// The files that could not be read, each once.
    [[nodiscard]] std::vector<std::string> missing() const;

private:
    using Key = std::tuple<std::string, int, int, double, double>;
    struct Kept {
        std::unique_ptr<CutPicture> cut;
        std::unique_ptr<EncodedPicture> encoded;
    };
    /// A file that has been decoded; without an image, it cannot be read.
    struct Decoded {
        pictures::ImagePtr image;  ///< 8 bits, three bands, or four with colours multiplied by opacity
        bool isSmaller = false;    ///< than the file
        std::uint64_t lastUse = 0;
    };
    std::unique_ptr<CutPicture> readCut(const std::string& file, int width, int height, double focusX,
                                        double focusY);
    VipsImage* decoded(const std::string& file, int width, int height);
    void makeRoom();

    std::filesystem::path folder_;
    std::map<Key, Kept> kept_;
    std::map<std::string, Decoded> decoded_;
    std::uint64_t uses_ = 0;
};

}  // namespace tenter::draw
