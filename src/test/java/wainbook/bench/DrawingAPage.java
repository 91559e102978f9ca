package wainbook.bench;

import java.net.CookieManager;
import java.net.URI;
import java.net.URL;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.concurrent.Callable;
import wainbook.setup.DemoWorks;

/** How long a browser waits for a page, beside the page that asks nothing of the record. */
final class DrawingAPage {

    private static final String LEAST = "/sign-in";

    private final URI base;
    private final HttpClient stranger = HttpClient.newHttpClient();
    private final HttpClient signedIn =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    DrawingAPage(URL base, String user) throws Exception {
        this.base = base.toURI();
        HttpRequest sent = HttpRequest.newBuilder(this.base.resolve("/j_security_check"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("j_username=" + user + "&j_password=" + DemoWorks.PASSWORD))
                .build();
        HttpResponse<Void> answer = signedIn.send(sent, BodyHandlers.discarding());
        if (answer.statusCode() != 302) {
            throw new AssertionError("signing in gives " + answer.statusCode());
        }
    }

    Comparison comparison(String page, String path) {
        return new Comparison(
                "draw " + page,
                1,
                () -> getting(signedIn, path),
                "draw the sign-in page",
                () -> getting(stranger, LEAST));
    }

    private Callable<?> getting(HttpClient client, String path) {
        HttpRequest request = HttpRequest.newBuilder(base.resolve(path))
                .header("Accept", "text/html")
                .header("Accept-Encoding", "gzip")
                .build();
        return () -> {
            HttpResponse<byte[]> answer = client.send(request, BodyHandlers.ofByteArray());
            if (answer.statusCode() != 200) {
                throw new AssertionError(path + " gives " + answer.statusCode());
            }
            return answer.body();
        };
    }
}
