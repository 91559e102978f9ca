package wainbook.setup;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import jakarta.inject.Inject;
import picocli.CommandLine.Command;
import picocli.CommandLine.IFactory;

/** {@code java -jar quarkus-run.jar [verify|rebuild|import|export|password]}; without a command, the server. */
@Command(
        name = "wainbook",
        mixinStandardHelpOptions = true,
        subcommands = {
            VerifyCommand.class,
            RebuildCommand.class,
            ImportCommand.class,
            ExportCommand.class,
            PasswordCommand.class
        })
public class CommandLine implements QuarkusApplication {

    @Inject
    IFactory factory;

    @Override
    public int run(String... arguments) {
        if (arguments.length == 0) {
            Quarkus.waitForExit();
            return 0;
        }
        return new picocli.CommandLine(this, factory).execute(arguments);
    }
}
