package wainbook.line.milestone.webhook;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import wainbook.line.milestone.webhook.Delivery.Fault;
import wainbook.line.milestone.webhook.Delivery.Outgone;

/**
 * By HTTP: follows nothing, waits for little, reads no body. Where the name leads is looked at each time before it is sent; the
 * connection asks the same resolver, whose answer the machine keeps for half a minute, so both see the same.
 */
@ApplicationScoped
class OverHttp implements Sending {

    private static final Duration CONNECTING = Duration.ofSeconds(5);
    private static final Duration ANSWERING = Duration.ofSeconds(10);

    private final Address.Allowed allowed;
    private final HttpClient client = HttpClient.newBuilder()
            .followRedirects(HttpClient.Redirect.NEVER)
            .connectTimeout(CONNECTING)
            .build();

    OverHttp(
            @ConfigProperty(name = "wainbook.webhooks.private-networks", defaultValue = "false") boolean inside,
            @ConfigProperty(name = "wainbook.webhooks.plain-loopback", defaultValue = "false") boolean plain) {
        this.allowed = new Address.Allowed(inside, plain);
    }

    Address.Allowed allowed() {
        return allowed;
    }

    @Override
    public Outgone send(Message message) {
        Optional<URI> address = Address.read(message.address(), allowed);
        if (address.isEmpty()) {
            return Outgone.failed(Fault.BAD_ADDRESS);
        }
        try {
            String host = address.get().getHost().replaceAll("[\\[\\]]", "");
            if (!Arrays.stream(InetAddress.getAllByName(host)).allMatch(to -> Address.mayLead(to, allowed))) {
                return Outgone.failed(Fault.LEADS_INSIDE);
            }
            return answer(address.get(), message);
        } catch (UnknownHostException unknown) {
            return Outgone.failed(Fault.NAME_UNKNOWN);
        } catch (HttpTimeoutException slow) {
            return Outgone.failed(Fault.TOO_SLOW);
        } catch (IOException broken) {
            return Outgone.failed(Fault.NO_CONNECTION);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Outgone.failed(Fault.NOT_KNOWN);
        }
    }

    /** The body is closed unread: whatever it says, and however long it is. */
    private Outgone answer(URI address, Message message) throws IOException, InterruptedException {
        HttpResponse<InputStream> answer = client.send(
                HttpRequest.newBuilder(address)
                        .timeout(ANSWERING)
                        .header("Content-Type", "application/json")
                        .header("User-Agent", "wainbook")
                        .header(Signature.TIME_HEADER, message.time())
                        .header(Signature.HEADER, Signature.of(message.secret(), message.time(), message.body()))
                        .POST(HttpRequest.BodyPublishers.ofString(message.body()))
                        .build(),
                HttpResponse.BodyHandlers.ofInputStream());
        answer.body().close();
        return Outgone.answered(answer.statusCode());
    }
}
