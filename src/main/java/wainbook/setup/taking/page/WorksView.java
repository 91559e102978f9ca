package wainbook.setup.taking.page;

import wainbook.page.Form;

/**
 * What the page of the works' files shows.
 *
 * @param taken whether files were taken just now
 * @param begun whether the works has a process yet
 */
public record WorksView(Form form, boolean taken, boolean begun) {}
