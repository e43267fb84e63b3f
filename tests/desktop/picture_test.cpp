// The window and the picture without a display draw the same.
#include "draw/row_picture.h"
#include "row/row_painter.h"
#include "showing.h"

namespace tenter::desktop {

class PictureTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void looksLikeTheWindow_data();
    void looksLikeTheWindow();
};

void PictureTest::looksLikeTheWindow_data() {
    QTest::addColumn<QString>("sample");
    QTest::addColumn<double>("width");
    QTest::addColumn<double>("scale");
    for (const char* sample : {"shore-walks", "night-sky", "season", "marsh-ar"})
        for (const double width : {360.0, 1000.0, 1500.0})
            QTest::addRow("%s at %g px", sample, width) << QString(sample) << width << 1.0;
    QTest::addRow("at 2x") << QString("shore-walks") << 900.0 << 2.0;
}

/// Mean absolute difference of the channels, 0 to 255.
double difference(const QImage& one, const QImage& other) {
    double sum = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x) {
            const QRgb a = one.pixel(x, y);
            const QRgb b = other.pixel(x, y);
            sum +=
                std::abs(qRed(a) - qRed(b)) + std::abs(qGreen(a) - qGreen(b)) + std::abs(qBlue(a) - qBlue(b));
        }
    }
    return sum / (3.0 * one.width() * one.height());
}

/// The largest of it over squares of 40 px, so that a missing word shows.
double worstDifference(const QImage& one, const QImage& other) {
    constexpr int side = 40;
    double worst = 0;
    for (int y = 0; y + side <= one.height(); y += side)
        for (int x = 0; x + side <= one.width(); x += side)
            worst = std::max(worst, difference(one.copy(x, y, side, side), other.copy(x, y, side, side)));
    return worst;
}

/// Paints the places of the pictures of cards over, and returns the largest difference of one of them: their
/// pixels come from other filters.
double withoutPictures(const layout::Layout& layout, double scale, QImage& one, QImage& other) {
    double worst = 0;
    for (const layout::LaidPart& part : layout.parts) {
        if (!part.picture) continue;
        const QRect place =
            QRectF(part.box.x * scale, part.box.y * scale, part.box.width * scale, part.box.height * scale)
                .toAlignedRect()
                .intersected(one.rect());
        worst = std::max(worst, difference(one.copy(place), other.copy(place)));
        for (QImage* image : {&one, &other})
            QPainter(image).fillRect(place, Qt::gray);
    }
    return worst;
}

void PictureTest::looksLikeTheWindow() {
    QFETCH(QString, sample);
    QFETCH(double, width);
    QFETCH(double, scale);
    Document document;
    project::Problems problems;
    const std::string file = TENTER_SOURCE_DIR "/sample-projects/" + sample.toStdString() + ".tenter.json";
    QVERIFY(document.openAsNew(file, problems));
    const layout::PreparedRow prepared(document.project(), 0, document.store(),
                                       text::atRatio(text::defaultProfile(), scale));
    const layout::Layout layout = layout::layOutDrawn(prepared, width);
    const LaidOutRow laid{document.project(), prepared, layout};

    row::Canvas canvas;
    canvas.scale = scale;
    canvas.image = QImage(static_cast<int>(std::lround(layout.width * scale)),
                          static_cast<int>(std::lround(layout.pageHeight * scale)), QImage::Format_RGB32);
    row::Pictures pictures;
    row::RowPainter painter(document, pictures);
    painter.paint(canvas, laid, {}, Qt::white);
    pictures.waitUntilIdle(20000);
    painter.paint(canvas, laid, {}, Qt::white);

    draw::PictureSource source(TENTER_SOURCE_DIR "/sample-projects");
    const std::string png = draw::pngPicture(laid, scale, source, document.store(), problems);
    QImage drawn;
    QVERIFY(drawn.loadFromData(QByteArray::fromStdString(png)));
    QCOMPARE(drawn.size(), canvas.image.size());
    drawn.convertTo(QImage::Format_RGB32);
    const double ofPictures = withoutPictures(layout, scale, drawn, canvas.image);
    QVERIFY2(ofPictures < 10, qPrintable(QString("pictures of cards: %1").arg(ofPictures)));
    QVERIFY2(difference(drawn, canvas.image) < 0.5,
             qPrintable(QString::number(difference(drawn, canvas.image))));
    QVERIFY2(worstDifference(drawn, canvas.image) < 5,
             qPrintable(QString::number(worstDifference(drawn, canvas.image))));
}

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::PictureTest)
#include "picture_test.moc"
