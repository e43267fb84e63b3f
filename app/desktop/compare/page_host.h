// A minimal HTTP server (a subset of RFC 9112) that shows pages to a browser on this computer.
#pragma once

#include <QByteArray>
#include <QHash>
#include <QObject>
#include <QTcpServer>
#include <QUrl>
#include <functional>

class QTcpSocket;

namespace tenter::desktop::compare {

/// Listens on 127.0.0.1 only, below a random path. Every other request gets status 404.
class PageHost : public QObject {
    Q_OBJECT

public:
    explicit PageHost(QObject* parent = nullptr);
    ~PageHost() override;

    /// Starts the server on a free port; false if there is none.
    bool listen();
    /// Serves `html` at `address(name)`.
    void addPage(const QByteArray& name, const QByteArray& html);
    /// Answers a POST request to `address(name)` with the JSON that `answer` returns for its body.
    void addAnswer(const QByteArray& name, std::function<QByteArray(const QByteArray&)> answer);
    [[nodiscard]] QUrl address(const QByteArray& name) const;

private:
    struct Request {
        QByteArray method, path, host;
        qsizetype body = 0;    ///< offset of the body in the request
        qsizetype length = 0;  ///< of the body, in bytes
    };
    void readRequest(QTcpSocket* socket);
    void respond(QTcpSocket* socket, const Request& request, const QByteArray& body);
    static bool parse(const QByteArray& received, Request& request);

    QTcpServer server_;
    QByteArray secret_;
    QHash<QByteArray, QByteArray> pages_;
    QHash<QByteArray, std::function<QByteArray(const QByteArray&)>> answers_;
    QHash<QTcpSocket*, QByteArray> received_;
};

}  // namespace tenter::desktop::compare
