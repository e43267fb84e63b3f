// Draws every scene into a folder as JPEG.
#include <QDir>
#include <QFileInfo>
#include <cstdio>

#include "scenes.h"

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "usage: draw-pictures FOLDER\n");
        return 2;
    }
    const QDir folder(QString::fromLocal8Bit(argv[1]));
    if (!folder.exists()) {
        std::fprintf(stderr, "draw-pictures: %s: no such folder; make it first\n", argv[1]);
        return 2;
    }
    for (const draw::Scene& scene : draw::scenes()) {
        QImage image(scene.size, QImage::Format_RGB32);
        image.fill(Qt::black);
        scene.paint(image);
        const QString file = folder.filePath(QString::fromLatin1(scene.name) + ".jpg");
        if (!image.save(file, "JPEG", 82)) {
            std::fprintf(stderr, "draw-pictures: %s: cannot be written\n", qPrintable(file));
            return 2;
        }
        std::printf("%-18s %4d x %4d  %4lld kB\n", scene.name, image.width(), image.height(),
                    static_cast<long long>(QFileInfo(file).size() / 1024));
    }
    return 0;
}
