package wainbook.setup;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import wainbook.page.SignIn;
import wainbook.process.VehicleFacts;
import wainbook.setup.files.Found;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksFolder;

/** The invented works that the program shows itself with, and the way into it. */
@ApplicationScoped
public class DemoWorks {

    /** Everybody's password there; outside the demo there are no default passwords. */
    public static final String PASSWORD = "paced-line-demo";

    private final boolean wanted;
    private final String folder;
    private List<SignIn.User> users;

    DemoWorks(
            @ConfigProperty(name = "wainbook.demo") boolean wanted,
            @ConfigProperty(name = "wainbook.demo.folder") String folder) {
        this.wanted = wanted;
        this.folder = folder;
    }

    public boolean wanted() {
        return wanted;
    }

    public String folder() {
        return folder;
    }

    /** The works as its files say it. */
    public Found files() {
        return WorksFolder.onClassPath(folder, VehicleFacts.PREDICATES);
    }

    /** Who may sign in to the demo, with what they do; nobody outside it. */
    public synchronized List<SignIn.User> users() {
        if (users == null) {
            users = wanted ? files().fold(DemoWorks::users, faults -> List.<SignIn.User>of()) : List.of();
        }
        return users;
    }

    private static List<SignIn.User> users(WorksFiles files) {
        return files.people().stream()
                .map(person -> new SignIn.User(person.user(), does(person)))
                .toList();
    }

    private static String does(Lines.Person person) {
        return String.join(", ", person.roles()).replace('-', ' ');
    }
}
