package wainbook.setup;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Words;
import wainbook.setup.start.StartCode;
import wainbook.setup.taking.Asker;
import wainbook.setup.taking.Taking;

/** What happens when the program starts: an empty data folder gets the demo works, and the log says where to look. */
@ApplicationScoped
class FirstStart {

    private static final Logger LOG = Logger.getLogger("wainbook");

    private final Ledger ledger;
    private final Taking taking;
    private final Clock clock;
    private final DemoWorks demo;
    private final StartCode code;
    private final String host;
    private final int port;
    private final boolean command;

    FirstStart(
            Ledger ledger,
            Taking taking,
            Clock clock,
            DemoWorks demo,
            StartCode code,
            @ConfigProperty(name = "quarkus.http.host") String host,
            @ConfigProperty(name = "quarkus.http.port") int port,
            @ConfigProperty(name = "wainbook.command", defaultValue = "false") boolean command) {
        this.ledger = ledger;
        this.taking = taking;
        this.clock = clock;
        this.demo = demo;
        this.code = code;
        this.host = host;
        this.port = port;
        this.command = command;
    }

    void begin(@Observes StartupEvent event) {
        if (command) {
            return;
        }
        if (demo.wanted() && ledger.history(Subject.works()).isEmpty()) {
            demo.files()
                    .fold(
                            files -> {
                                taking.begin(files, Asker.setup(clock), DemoWorks.PASSWORD);
                                return true;
                            },
                            faults -> {
                                throw new IllegalStateException("the demo works has faults: " + faults);
                            });
        }
        LOG.info(Words.of("setup.address", "0.0.0.0".equals(host) ? "localhost" : host, port));
        if (code.open()) {
            LOG.info(Words.of("setup.startCode", code.code()));
        }
        demo.users().stream()
                .findFirst()
                .ifPresent(user -> LOG.info(Words.of("setup.demoSignIn", user.user(), DemoWorks.PASSWORD)));
    }
}
