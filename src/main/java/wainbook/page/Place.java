package wainbook.page;

import java.util.Set;

/**
 * An entry of the navigation.
 *
 * @param path where it leads
 * @param key the key of its text
 * @param roles who sees it; empty for everyone signed in
 */
public record Place(String path, String key, Set<String> roles) {

    public Place {
        roles = Set.copyOf(roles);
    }

    public static Place forEveryone(String path, String key) {
        return new Place(path, key, Set.of());
    }

    public boolean holds(String present) {
        return present.equals(path) || present.startsWith(path + "/");
    }
}
