/** The build book of a works that turns worn diesel trucks and buses into battery-electric ones. */
package wainbook;
