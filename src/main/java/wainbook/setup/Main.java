package wainbook.setup;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.nio.file.Path;

/** Starts the server; or, with a command as first argument, does that and ends. */
@QuarkusMain
public class Main {

    public static void main(String... arguments) {
        Path data = Path.of(System.getProperty("wainbook.data", "./.wainbook"));
        SessionKeys.in(data).forEach(Main::setUnlessGiven);
        if (arguments.length > 0) {
            // A command must neither open a port nor talk over its own answer.
            System.setProperty("quarkus.http.host-enabled", "false");
            System.setProperty("quarkus.log.console.level", "WARN");
            System.setProperty("wainbook.command", "true");
        }
        Quarkus.run(CommandLine.class, arguments);
    }

    private static void setUnlessGiven(String property, String setting) {
        if (System.getProperty(property) == null) {
            System.setProperty(property, setting);
        }
    }
}
