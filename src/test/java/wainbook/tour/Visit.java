package wainbook.tour;

/** Who looks at which page; nobody is signed in as {@link Eyes#STRANGER}. */
record Visit(String user, String path) {}
