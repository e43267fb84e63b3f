// Serves a few pages to one browser on this machine. RFC 9112, as much of it as that needs.
#pragma once

#include <QByteArray>
#include <QHash>
#include <QObject>
#include <QTcpServer>
#include <QUrl>
#include <functional>

class QTcpSocket;

namespace tenter::desktop::compare {

/// Listens on 127.0.0.1 alone, below a path that nobody can guess; whatever else is asked for is not there.
class PageHost : public QObject {
    Q_OBJECT

public:
    explicit PageHost(QObject* parent = nullptr);
    ~PageHost() override;

    /// False if no port could be had.
    bool listen();
    /// Serves `html` as `name`.
    void addPage(const QByteArray& name, const QByteArray& html);
    /// Answers what is posted to `name` with the JSON that `answer` makes of it.
    void addAnswer(const QByteArray& name, std::function<QByteArray(const QByteArray&)> answer);
    [[nodiscard]] QUrl address(const QByteArray& name) const;

private:
    struct Request {
        QByteArray method, path, host;
        qsizetype body = 0;    ///< where it starts
        qsizetype length = 0;  ///< of the body
    };
    void take(QTcpSocket* socket);
    void respond(QTcpSocket* socket, const Request& request, const QByteArray& body);
    static bool parse(const QByteArray& received, Request& request);

    QTcpServer server_;
    QByteArray secret_;
    QHash<QByteArray, QByteArray> pages_;
    QHash<QByteArray, std::function<QByteArray(const QByteArray&)>> answers_;
    QHash<QTcpSocket*, QByteArray> received_;
};

}  // namespace tenter::desktop::compare
