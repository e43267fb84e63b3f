// Draws every scene into a folder as JPEG; with SCALE, that many times as wide and as tall.
#include <QDir>
#include <QFileInfo>
#include <cstdio>
#include <cstdlib>

#include "scenes.h"

int main(int argc, char** argv) {
    const int scale = argc == 3 ? std::atoi(argv[2]) : 1;
    if (argc < 2 || argc > 3 || scale < 1 || scale > 8) {
        std::fprintf(stderr, "usage: draw-pictures FOLDER [SCALE]   SCALE: 1 to 8\n");
        return 2;
    }
    const QDir folder(QString::fromLocal8Bit(argv[1]));
    if (!folder.exists()) {
        std::fprintf(stderr, "draw-pictures: %s: no such folder; make it first\n", argv[1]);
        return 2;
    }
    for (const draw::Scene& scene : draw::scenes()) {
        QImage image(scene.size * scale, QImage::Format_RGB32);
        image.setDevicePixelRatio(scale);
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
