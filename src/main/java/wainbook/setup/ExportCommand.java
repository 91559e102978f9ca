package wainbook.setup;

import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wainbook.page.Words;
import wainbook.setup.files.WorksText;
import wainbook.setup.taking.Taking;

/** Writes the files of the works into a folder that is new or empty. Exit code 3 when something is there already. */
@Command(name = "export", mixinStandardHelpOptions = true)
public class ExportCommand implements Callable<Integer> {

    static final int REFUSED = 3;

    @Parameters(paramLabel = "FOLDER")
    Path folder;

    @Inject
    Taking taking;

    @Spec
    CommandSpec spec;

    @Override
    @ActivateRequestContext
    public Integer call() throws IOException {
        Files.createDirectories(folder);
        try (Stream<Path> there = Files.list(folder)) {
            if (there.findAny().isPresent()) {
                spec.commandLine().getOut().println(Words.of("setup.folderNotEmpty", folder));
                return REFUSED;
            }
        }
        Map<String, String> texts = WorksText.of(taking.givenOut());
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Path file = folder.resolve(text.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, text.getValue());
        }
        spec.commandLine().getOut().println(Words.of("setup.givenOut", texts.size(), folder));
        return 0;
    }
}
