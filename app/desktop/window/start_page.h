// The start page, shown before a project is open: samples, recent projects, Open.
#pragma once

#include <QAbstractButton>
#include <QBoxLayout>
#include <QWidget>
#include <vector>

#include "document/samples.h"

namespace tenter::desktop::window {

class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(QWidget* parent = nullptr);
    void setSamples(const std::vector<Sample>& samples);
    void setRecent(const QStringList& files);

Q_SIGNALS:
    void sampleRequested(const QString& file);
    void fileRequested(const QString& file);
    void openRequested();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QAbstractButton* entry(const QString& title, const QString& description);
    void clear(QBoxLayout* box);

    QWidget* column_;
    QVBoxLayout* samples_;
    QVBoxLayout* recent_;
    QWidget* recentTitle_;
};

}  // namespace tenter::desktop::window
