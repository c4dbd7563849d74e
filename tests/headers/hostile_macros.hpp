// Names that widely used headers define as macros. check_headers.cmake adds every letter followed
// by a number (B0 in termios.h, H7, g6, T1, ...).
#define HOSTILE ] } ) a name of ours meets a macro of somebody else

// windows.h and what it brings
#define min HOSTILE
#define max HOSTILE
#define near HOSTILE
#define far HOSTILE
#define small HOSTILE
#define hyper HOSTILE
#define interface HOSTILE
#define pascal HOSTILE // and Boost.Units steps aside for it
#define cdecl HOSTILE
#define IN HOSTILE
#define OUT HOSTILE
#define OPTIONAL HOSTILE
#define ERROR HOSTILE
#define CONST HOSTILE
#define VOID HOSTILE
#define DELETE HOSTILE
#define IGNORE HOSTILE
#define STRICT HOSTILE
#define ABSOLUTE HOSTILE
#define RELATIVE HOSTILE
#define TRANSPARENT HOSTILE
#define TRUE HOSTILE
#define FALSE HOSTILE
#define BOOL HOSTILE

// Unix: sys/sysmacros.h, the predefined names of the gnu++ dialects, curses.h
#undef unix
#undef linux
#define major HOSTILE
#define minor HOSTILE
#define unix HOSTILE
#define linux HOSTILE
#define ERR HOSTILE
#define OK HOSTILE

// X.h, Arduino.h, ctype.h of small libraries, math.h
#define None HOSTILE
#define Bool HOSTILE
#define Status HOSTILE
#define Success HOSTILE
#define Always HOSTILE
#define INPUT HOSTILE
#define OUTPUT HOSTILE
#define HIGH HOSTILE
#define LOW HOSTILE
#define PI HOSTILE
#define DEGREES HOSTILE
#define bit HOSTILE
#define _A HOSTILE
#define _B HOSTILE
#define _C HOSTILE
#define _L HOSTILE
#define _N HOSTILE
#define _P HOSTILE
#define _S HOSTILE
#define _U HOSTILE
#define _X HOSTILE
#define DOMAIN HOSTILE
#define OVERFLOW HOSTILE
#define UNDERFLOW HOSTILE
