package wainbook.page;

import java.util.List;

/** Names the places of the app. Whoever knows all rooms implements it; a room that does not exist is not linked. */
public interface Navigation {
    List<PlaceGroup> groups();
}
