// The pictures of the sample projects: an invented coast, drawn.
#pragma once

#include <QImage>
#include <QSize>
#include <vector>

namespace draw {

struct Scene {
    const char* name;
    QSize size;
    void (*paint)(QImage&);
};

const std::vector<Scene>& scenes();

}  // namespace draw
