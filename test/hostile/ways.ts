type Ways = Readonly<Record<string, (at: string) => string>>;

/** Ways in which a page asks for something, with the address put in. */
export const asking: Ways = {
  'a picture': (at) => `<img src="${at}">`,
  'a choice of pictures': (at) => `<picture><source srcset="${at} 1x"><img srcset="${at} 2x"></picture>`,
  'a style sheet': (at) => `<link rel="stylesheet" href="${at}">`,
  'another style sheet': (at) => `<link rel="alternate stylesheet" title="a" href="${at}">`,
  'a frame': (at) => `<iframe src="${at}"></iframe>`,
  'a frame that is shut in': (at) => `<iframe sandbox src="${at}"></iframe>`,
  'a frame in a frame': (at) => `<iframe srcdoc="<iframe src='${at}'></iframe>"></iframe>`,
  'a frame of data': (at) =>
    `<iframe src="data:text/html,<link rel=stylesheet href='${at}'><img src='${at}'><iframe src='${at}'>"></iframe>`,
  'a frame that goes elsewhere': (at) =>
    `<iframe srcdoc="<meta http-equiv=refresh content='0;url=${at}'>"></iframe>`,
  'an object': (at) => `<object data="${at}"></object>`,
  'an embedded thing': (at) => `<embed src="${at}"><embed src="${at}" type="application/pdf">`,
  'a drawing used': (at) => `<svg><use href="${at}#a"/><use xlink:href="${at}#a"/></svg>`,
  'a picture in a drawing': (at) => `<svg><image href="${at}" width="9" height="9"/></svg>`,
  'a picture in a filter': (at) =>
    `<svg><filter id="f"><feImage href="${at}"/></filter><path d="M0 0h9v9z" filter="url(#f)"/></svg>`,
  'paint from elsewhere': (at) =>
    ['fill', 'mask', 'clip-path', 'filter', 'marker-start']
      .map((by) => `<svg><path d="M0 0h9v9z" ${by}="url('${at}#a')"/></svg>`)
      .join(''),
  'a background': (at) => `<p style="background: url('${at}')">a</p>`,
  'a background of old': (at) => `<table background="${at}"><tr><td>a</table>`,
  'backgrounds to choose from': (at) => `<p style="background: image-set('${at}' 1x)">a</p>`,
  'a mark, a pointer, a border, a shape': (at) =>
    `<ul style="list-style: url('${at}'); cursor: url('${at}'), auto; border-image: url('${at}') 1">
     <li style="float: left; shape-outside: url('${at}'); mask-image: url('${at}')">a</ul>`,
  'content put before': (at) => `<style>p::before { content: url('${at}') }</style><p>a</p>`,
  'style brought in': (at) => `<style>@import '${at}'; @import url(${at}) layer(a);</style>`,
  'style brought in by data': (at) => `<link rel="stylesheet" href="data:text/css,@import '${at}';">`,
  'a font': (at) =>
    `<style>@font-face { font-family: N; src: url('${at}') } p { font-family: N }</style><p>a</p>`,
  'a font of the margins': (at) =>
    `<style>@font-face { font-family: N; src: url('${at}') } @page { @top-left { content: 'a'; font-family: N } }</style>`,
  'a picture in the margins': (at) => `<style>@page { @top-left { content: url('${at}') } }</style>`,
  'another page': (at) => `<meta http-equiv="refresh" content="0;url=${at}">`,
  'another base': (at) => `<base href="${at}/"><img src="a.png"><link rel="stylesheet" href="a.css">`,
  'a film': (at) => `<video src="${at}" poster="${at}" autoplay preload="auto"></video>`,
  'a sound': (at) => `<audio src="${at}" autoplay preload="auto"></audio>`,
  'a button of a form': (at) => `<form action="${at}"><input type="image" src="${at}"></form>`,
  hints: (at) =>
    HINTS.map((rel) => `<link rel="${rel}" href="${at}"><link rel="${rel}" as="image" href="${at}">`).join(
      '',
    ),
  'a report': (at) =>
    `<meta http-equiv="Content-Security-Policy" content="img-src 'none'; report-uri ${at}"><img src="${at}">`,
  'a shadow': (at) =>
    `<div><template shadowrootmode="open"><link rel="stylesheet" href="${at}"></template></div>`,
};

/** Ways that come to nothing by themselves, since nothing is run, clicked or known any more. */
export const idle: Ways = {
  'a hint of a connection': (at) =>
    `<link rel="preconnect" href="${at}"><link rel="preconnect" crossorigin href="${at}"><link rel="dns-prefetch" href="${at}">`,
  'a script': (at) => `<script src="${at}"></script><script type="module" src="${at}"></script>`,
  'a script of its own': (at) =>
    `<script>fetch('${at}'); new Image().src = '${at}'; new WebSocket('${at.replace(/^http/, 'ws')}');
     navigator.sendBeacon('${at}'); new RTCPeerConnection({ iceServers: [{ urls: 'stun:127.0.0.1' }] });
     location = '${at}'</script>`,
  handlers: (at) =>
    `<details open ontoggle="fetch('${at}')">a</details><svg onload="fetch('${at}')"><animate onbegin="fetch('${at}')" attributeName="x" dur="1s"/></svg>`,
  'rules of speculation': (at) =>
    `<script type="speculationrules">{ "prefetch": [{ "urls": ["${at}"], "eagerness": "immediate" }],
     "prerender": [{ "urls": ["${at}"], "eagerness": "immediate" }] }</script><a href="${at}">a</a>`,
  'a drawing in data': (at) =>
    `<img src="data:image/svg+xml,<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><image href='${at}'/><style>@import '${at}';</style><script href='${at}'/></svg>">`,
  'a link': (at) => `<a href="${at}" ping="${at}" autofocus>a</a><map><area href="${at}"></map>`,
  'a form': (at) =>
    `<form action="${at}" method="post"><button autofocus formaction="${at}">a</button></form>`,
  'ways of old': (at) =>
    `<applet code="${at}" archive="${at}"></applet><frameset><frame src="${at}"></frameset><bgsound src="${at}">
     <object classid="${at}" codebase="${at}"></object><?xml-stylesheet href="${at}"?><html manifest="${at}">`,
};

const HINTS = ['preload', 'modulepreload', 'prefetch', 'prerender', 'icon', 'manifest', 'import'];
