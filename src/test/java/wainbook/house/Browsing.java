package wainbook.house;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.RestAssured;
import io.restassured.filter.cookie.CookieFilter;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One of the cast at the pages, signed in by form: draws forms and sends them with what was hidden in them. */
public final class Browsing {

    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");

    private final CookieFilter cookies = new CookieFilter();

    private Browsing() {}

    public static Browsing as(Cast person) {
        return as(person.user(), Cast.PASSWORD);
    }

    /** Somebody who is not signed in. */
    public static Browsing asStranger() {
        return new Browsing();
    }

    public static Browsing as(String user, String password) {
        var browsing = new Browsing();
        Response answer = browsing.web()
                .formParam("j_username", user)
                .formParam("j_password", password)
                .post("/j_security_check");
        assertThat(answer.statusCode()).isEqualTo(302);
        return browsing;
    }

    public Response get(String path) {
        return web().get(path);
    }

    public String page(String path) {
        Response answer = get(path);
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.asString();
    }

    /** The page's hidden fields as a browser would send them. */
    public Map<String, Object> form(String path) {
        Map<String, Object> fields = new LinkedHashMap<>();
        Matcher hidden = HIDDEN.matcher(page(path));
        while (hidden.find()) {
            fields.put(hidden.group(1), hidden.group(2));
        }
        return fields;
    }

    public Response send(String path, Map<String, Object> fields) {
        RequestSpecification request = web();
        fields.forEach((name, value) -> {
            if (value instanceof Iterable<?> several) {
                several.forEach(one -> request.formParam(name, one));
            } else {
                request.formParam(name, value);
            }
        });
        return request.post(path);
    }

    /** The same form with a small file in its field {@code file}, as a browser sends it. */
    public Response send(String path, Map<String, Object> fields, String fileName, String mediaType) {
        return send(path, fields, fileName, fileName.getBytes(StandardCharsets.UTF_8), mediaType);
    }

    public Response send(String path, Map<String, Object> fields, String fileName, byte[] content, String mediaType) {
        RequestSpecification request = web();
        fields.forEach((name, value) -> request.multiPart(name, String.valueOf(value)));
        return request.multiPart("file", fileName, content, mediaType).post(path);
    }

    private RequestSpecification web() {
        return RestAssured.given().filter(cookies).redirects().follow(false);
    }
}
