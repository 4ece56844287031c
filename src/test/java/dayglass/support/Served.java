package dayglass.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.app.Rooms;
import dayglass.app.ServerRoutes;
import dayglass.web.WebServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The program as it is served, on a database of its own; every answer is held to the contract. */
public final class Served implements AutoCloseable {
    private static final int SOCKET_TIMEOUT_MS = 10_000;

    private final Rooms rooms;
    private final WebServer server;
    private final HttpClient client = HttpClient.newHttpClient();
    private final Contract contract = Contract.read();

    private Served(Rooms rooms) {
        this.rooms = rooms;
        this.server = WebServer.start(new WebServer.Binding(WebServer.Binding.LOOPBACK, 0), ServerRoutes.of(rooms));
    }

    /** Starts on a new database in the folder. */
    public static Served in(Path folder) {
        return new Served(Rooms.open(folder.resolve("dayglass.db"), Clock.systemUTC()));
    }

    /** The same by another clock. */
    public static Served in(Path folder, Clock clock) {
        return new Served(Rooms.open(folder.resolve("dayglass.db"), clock));
    }

    /** The same with a clock that stands at noon of a day. */
    public static Rooms roomsAt(Path folder, String day) {
        return Rooms.open(
                folder.resolve("dayglass.db"), Clock.fixed(Instant.parse(day + "T12:00:00Z"), ZoneOffset.UTC));
    }

    public Rooms rooms() {
        return rooms;
    }

    public Contract contract() {
        return contract;
    }

    public int port() {
        return server.port();
    }

    public Reply get(String address) {
        return send("GET", address, null);
    }

    /** Fetches a page as a browser does; pages are no part of the contract. */
    public Reply page(String address) {
        return sent(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + address))
                .header("Accept", "text/html"));
    }

    /** Sends a form of a page as a browser does, and does not follow where it leads. */
    public Reply form(String address, String form) {
        return sent(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + address))
                .header("Accept", "text/html")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form)));
    }

    private Reply sent(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return new Reply(response.statusCode(), response.headers().map(), response.body());
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    /** Sends JSON; further headers by name and value in turn. */
    public Reply post(String address, String body, String... headers) {
        return send("POST", address, body, headers);
    }

    public Reply put(String address, String body, String... headers) {
        return send("PUT", address, body, headers);
    }

    public Reply delete(String address, String... headers) {
        return send("DELETE", address, null, headers);
    }

    /** Sends a note's JSON and pictures as parts; further headers by name and value in turn. */
    public Reply postParts(String address, String note, List<byte[]> pictures, String... headers) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(("--part\r\nContent-Disposition: form-data; name=\"note\"\r\n\r\n" + note + "\r\n")
                .getBytes(StandardCharsets.UTF_8));
        for (byte[] picture : pictures) {
            body.writeBytes(
                    "--part\r\nContent-Disposition: form-data; name=\"picture\"; filename=\"a.jpg\"\r\nContent-Type: image/jpeg\r\n\r\n"
                            .getBytes(StandardCharsets.UTF_8));
            body.writeBytes(picture);
            body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
        }
        body.writeBytes("--part--\r\n".getBytes(StandardCharsets.UTF_8));
        String[] all = Arrays.copyOf(headers, headers.length + 2);
        all[headers.length] = "Content-Type";
        all[headers.length + 1] = "multipart/form-data; boundary=part";
        return sendBody("POST", address, BodyPublishers.ofByteArray(body.toByteArray()), all);
    }

    /** Sends a request, with JSON as its body where there is one, and holds the answer to the contract. */
    public Reply send(String method, String address, String body, String... headers) {
        if (body == null) {
            return sendBody(method, address, BodyPublishers.noBody(), headers);
        }
        String[] all = headers;
        if (!Arrays.asList(headers).contains("Content-Type")) {
            all = Arrays.copyOf(headers, headers.length + 2);
            all[headers.length] = "Content-Type";
            all[headers.length + 1] = "application/json";
        }
        return sendBody(method, address, BodyPublishers.ofString(body), all);
    }

    private Reply sendBody(String method, String address, HttpRequest.BodyPublisher body, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + address))
                .method(method, body);
        for (int at = 0; at < headers.length; at += 2) {
            request.header(headers[at], headers[at + 1]);
        }
        try {
            HttpResponse<String> response = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return held(
                    method,
                    address,
                    new Reply(response.statusCode(), response.headers().map(), response.body()));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    /** Sends bytes as they are and reads until the server closes. */
    public Reply raw(String method, String address, byte[] request) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port())) {
            socket.setSoTimeout(SOCKET_TIMEOUT_MS);
            socket.getOutputStream().write(request);
            socket.getOutputStream().flush();
            return held(method, address, parse(readAll(socket.getInputStream())));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    public Reply raw(String method, String address, String headersAndBody) {
        String request =
                method + " " + address + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n" + headersAndBody;
        return raw(method, address, request.getBytes(StandardCharsets.UTF_8));
    }

    private Reply held(String method, String address, Reply reply) {
        assertEquals(List.of(), contract.faultsOf(method, address, reply), method + " " + address + "\n" + reply);
        return reply;
    }

    /** A server that refuses a body may close before all of it was sent; what it answered until then counts. */
    private static byte[] readAll(InputStream stream) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            for (int next = stream.read(); next >= 0; next = stream.read()) {
                bytes.write(next);
            }
        } catch (IOException closed) {
            // What was read until then is the answer.
        }
        return bytes.toByteArray();
    }

    private static Reply parse(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        int end = text.indexOf("\r\n\r\n");
        String[] lines = text.substring(0, end).split("\r\n", -1);
        Map<String, List<String>> headers = new LinkedHashMap<>();
        for (String line : lines) {
            int colon = line.indexOf(": ");
            if (colon > 0) {
                headers.put(line.substring(0, colon), List.of(line.substring(colon + 2)));
            }
        }
        return new Reply(Integer.parseInt(lines[0].split(" ", -1)[1]), headers, text.substring(end + 4));
    }

    /** A costing request among the tests' examples. */
    public static String example(String name) {
        try {
            return Files.readString(Path.of("src/test/resources/dayglass/cost/examples", name + ".json"));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    @Override
    public void close() {
        server.close();
        rooms.close();
    }
}
