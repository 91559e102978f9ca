/** Paper for when the tool is down: numbered forms, a day’s print of open items, and how both are written over later. */
package wainbook.paper;
