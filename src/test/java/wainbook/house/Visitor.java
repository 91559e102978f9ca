package wainbook.house;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Somebody at every door, once each, with empty hands: signed in by form at the pages and by Basic at the API, or not at
 * all. Sends nothing that an act could take, to an order that is not there.
 */
final class Visitor {

    /** Who comes, by the heads of the table's columns. */
    enum Who {
        TECHNICIAN("technician", Cast.TECHNICIAN),
        TEAM_LEADER("team-leader", Cast.TEAM_LEADER),
        INSPECTOR("inspector", Cast.INSPECTOR),
        LINE_MANAGER("line-manager", Cast.LINE_MANAGER),
        WORKS_ENGINEER("works-engineer", Cast.WORKS_ENGINEER),
        QUALITY_ENGINEER("quality-engineer", Cast.QUALITY_ENGINEER),
        HANDOVER_CLERK("handover-clerk", Cast.HANDOVER_CLERK),
        AUDITOR("auditor", Cast.AUDITOR),
        ADMINISTRATOR("administrator", Cast.ADMINISTRATOR),
        WITHOUT_A_ROLE("without-a-role", Cast.OUTSIDER),
        ANONYMOUS("anonymous");

        private final String word;
        private final Optional<Cast> person;

        Who(String word) {
            this.word = word;
            this.person = Optional.empty();
        }

        Who(String word, Cast person) {
            this.word = word;
            this.person = Optional.of(person);
        }

        String word() {
            return word;
        }

        boolean signedIn() {
            return person.isPresent();
        }
    }

    /** How a door answered. */
    enum Answer {
        LET_IN,
        TURNED_AWAY,
        BROKE_DOWN
    }

    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String TOKEN = "csrf-token";

    private final HttpClient http = HttpClient.newBuilder()
            .followRedirects(HttpClient.Redirect.NEVER)
            .version(HttpClient.Version.HTTP_1_1)
            .build();
    private final URI app;
    private final Optional<Cast> person;
    private final String cookies;
    private final String token;

    Visitor(URI app, Who who) {
        this.app = app;
        this.person = who.person;
        List<String> given = person.map(this::signIn).orElse(List.of());
        HttpResponse<InputStream> page = sent(HttpRequest.newBuilder(app.resolve("/sign-in"))
                .header("Cookie", String.join("; ", given))
                .GET());
        List<String> all = Stream.concat(given.stream(), cookies(page).stream()).toList();
        this.cookies = String.join("; ", all);
        this.token = all.stream()
                .filter(cookie -> cookie.startsWith("wainbook-csrf="))
                .map(cookie -> cookie.substring(cookie.indexOf('=') + 1))
                .findFirst()
                .orElse("");
    }

    Answer at(Endpoint door) {
        URI uri = app.resolve(door.path().replace("{order}", "WB-NONE").replaceAll("\\{\\w+}", "1"));
        HttpRequest.Builder request = HttpRequest.newBuilder(uri);
        if (door.api()) {
            person.ifPresent(known -> request.header("Authorization", basic(known)));
        } else {
            request.header("Cookie", cookies).header("X-CSRF-TOKEN", token);
        }
        String type = door.consumes().orElse(door.api() ? "application/json" : FORM);
        request.header("Content-Type", type.startsWith("multipart/") ? type + "; boundary=none" : type)
                .method(door.verb(), HttpRequest.BodyPublishers.ofString(body(door, type)));
        return answer(sent(request), door);
    }

    private String body(Endpoint door, String type) {
        if (door.verb().equals("GET")) {
            return "";
        }
        if (type.equals(FORM)) {
            return TOKEN + "=" + URLEncoder.encode(token, StandardCharsets.UTF_8);
        }
        return type.startsWith("multipart/")
                ? "--none\r\nContent-Disposition: form-data; name=\"" + TOKEN + "\"\r\n\r\n" + token
                        + "\r\n--none--\r\n"
                : "";
    }

    private static Answer answer(HttpResponse<InputStream> answer, Endpoint door) {
        boolean toSignIn = answer.statusCode() == 302
                && answer.headers().firstValue("Location").orElse("").endsWith("/sign-in");
        if (answer.statusCode() == 401 || answer.statusCode() == 403 || (!door.api() && toSignIn)) {
            return Answer.TURNED_AWAY;
        }
        return answer.statusCode() >= 500 ? Answer.BROKE_DOWN : Answer.LET_IN;
    }

    private List<String> signIn(Cast known) {
        HttpResponse<InputStream> answer = sent(HttpRequest.newBuilder(app.resolve("/j_security_check"))
                .header("Content-Type", FORM)
                .POST(HttpRequest.BodyPublishers.ofString(
                        "j_username=" + known.user() + "&j_password=" + Cast.PASSWORD)));
        return cookies(answer).stream()
                .filter(cookie -> cookie.startsWith("wainbook-session="))
                .toList();
    }

    private static List<String> cookies(HttpResponse<?> answer) {
        return answer.headers().allValues("Set-Cookie").stream()
                .map(cookie -> cookie.split(";", 2)[0])
                .collect(Collectors.toList());
    }

    /** Reads no more than the head, so that a door which keeps sending is answered too. */
    private HttpResponse<InputStream> sent(HttpRequest.Builder request) {
        try {
            HttpResponse<InputStream> answer = http.send(
                    request.timeout(Duration.ofSeconds(20)).build(), HttpResponse.BodyHandlers.ofInputStream());
            answer.body().close();
            return answer;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static String basic(Cast known) {
        String both = known.user() + ":" + Cast.PASSWORD;
        return "Basic " + Base64.getEncoder().encodeToString(both.getBytes(StandardCharsets.UTF_8));
    }
}
