package wainbook.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Predicate;

/** One of the cast who listens to what a page is told. Reads block until something comes: give the test a ceiling. */
public final class Listening implements AutoCloseable {

    /** One event; its name is {@code message} where none is said. */
    public record Event(String name, String id, String data) {}

    private final BufferedReader lines;

    private Listening(InputStream stream) {
        lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
    }

    public static Listening as(Cast person, URI app, String path) {
        HttpClient http = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .cookieHandler(new CookieManager())
                .build();
        try {
            http.send(
                    HttpRequest.newBuilder(app.resolve("/j_security_check"))
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(HttpRequest.BodyPublishers.ofString(
                                    "j_username=" + person.user() + "&j_password=" + Cast.PASSWORD))
                            .build(),
                    HttpResponse.BodyHandlers.discarding());
            HttpResponse<InputStream> answer = http.send(
                    HttpRequest.newBuilder(app.resolve(path)).build(), HttpResponse.BodyHandlers.ofInputStream());
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("text/event-stream");
            return new Listening(answer.body());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** The next event; empty where the stream has come to its end. */
    public Optional<Event> next() {
        String name = "message";
        String id = "";
        var data = new StringJoiner("\n");
        try {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.isEmpty()) {
                    return Optional.of(new Event(name, id, data.toString()));
                }
                String value = line.substring(line.indexOf(':') + 1);
                if (line.startsWith("event:")) {
                    name = value;
                } else if (line.startsWith("id:")) {
                    id = value;
                } else if (line.startsWith("data:")) {
                    data.add(value);
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The next event that is like this, whatever comes before it. */
    public Event until(Predicate<Event> like) {
        for (Event event = next().orElseThrow(); ; event = next().orElseThrow()) {
            if (like.test(event)) {
                return event;
            }
        }
    }

    public Event untilSays(String text) {
        return until(event -> event.data().contains(text));
    }

    @Override
    public void close() {
        try {
            lines.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
